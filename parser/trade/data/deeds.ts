import type { Sheet } from '../sheet.ts';

/** Work spoken of as a thing. */
export const DEEDS: Sheet[] = [
  {
    kind: 'work',
    lines: `inspection; inspections
rough inspection; framing inspection, rough-in inspection
final inspection
punch walk; walkthrough, walk through
change order; co
pressure test; leak test, air test, water test, smoke test
flood test
blower door; blower door test
delivery; drop off
pickup
demolition; tear out, tear off
regrouting
touching up`,
  },
];
