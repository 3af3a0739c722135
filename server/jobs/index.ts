export { fold, standing } from './fold.ts';
export type * from './types.ts';
