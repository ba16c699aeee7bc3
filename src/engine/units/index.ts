export * from './format-length.ts';
export * from './parse-length.ts';
export * from './ruler.ts';
export * from './system.ts';
