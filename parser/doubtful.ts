import type { Fact } from './types.ts';

/** Of facts less sure than this, 4 in 10 are wrong (counted on annotated notes that no weight was learned from). */
const SURE = 0.6;

/** Whether a fact is marked, so that whoever reads it looks twice. */
export const isDoubtful = ({ confidence }: Pick<Fact, 'confidence'>): boolean => confidence < SURE;
