export { en } from './en/index.ts';
export * from './say.ts';
