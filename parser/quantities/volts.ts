import type { Draft } from './draft.ts';
import { unitNamed } from './units.ts';

const VOLT = unitNamed('volt')!;
/** Voltages that mains have: common practice, no source. */
const MAINS: ReadonlySet<number> = new Set([110, 115, 120, 125, 208, 220, 230, 240, 250, 277, 347, 415, 480, 600]);

/** "Thirty amp two forty", "one twenty fifteen amp": a voltage said bare beside the amps. */
export function sayVolts(drafts: readonly Draft[]): void {
  drafts.forEach((draft, i) => {
    const [before, behind] = [drafts[i - 1], drafts[i + 1]];
    const bare = draft.unit === null && draft.unitFrom === 'none' && draft.d === 1 && MAINS.has(draft.n);
    if (!bare || draft.group) return;
    const beside =
      (before?.unit?.unit === 'A' && before.until === draft.from) ||
      (behind?.unit?.unit === 'A' && behind.from === draft.until);
    if (!beside) return;
    draft.unit = VOLT;
    draft.unitFrom = 'implied';
  });
}
