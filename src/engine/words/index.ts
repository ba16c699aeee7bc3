export * from './say.ts';
