export { fold, foldFrom, type Snapshot } from './fold.ts';
export { noteOf, standing } from './history.ts';
export { type Rereading, reread } from './reread.ts';
export type * from './types.ts';
