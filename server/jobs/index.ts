export { blanked, filingOf, type Refiling, refilingIn } from './elsewhere.ts';
export { factsOtherwise } from './factsNow.ts';
export { fold, foldFrom, type Snapshot } from './fold.ts';
export { noteOf, standing } from './history.ts';
export { beforeReading, nextReading, type Rereading, readAnew, reread } from './reread.ts';
export type * from './types.ts';
