import { readNote } from '../../parser/index.ts';
import type { Done, Fact, FollowUp, Problem } from '../../parser/types.ts';

/** A Tuesday afternoon. */
export const SAID_AT = '2026-05-12T15:20:00';

const factsOf = (text: string): Fact[] => readNote(text, { saidAt: SAID_AT }).facts;

export const problemsIn = (text: string): Problem[] => factsOf(text).filter((f) => f.kind === 'problem');
export const followUpsIn = (text: string): FollowUp[] => factsOf(text).filter((f) => f.kind === 'followUp');
export const doneIn = (text: string): Done[] => factsOf(text).filter((f) => f.kind === 'done');
