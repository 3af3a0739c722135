import type { ComputedLine, SiteFacts } from './types.ts';

/** Lines whose pack nobody said, in the packs of the firm's own price list where it has them. */
export const inOwnPacks = (lines: readonly ComputedLine[], { packFor }: SiteFacts): ComputedLine[] =>
  lines.map((line) => {
    const own = packFor && (line.packAssumed || line.pack === null) ? packFor(line.item, line.size, line.unit) : null;
    if (!own) return line;
    const packs = line.amount.div(own.holds).ceil().toFraction();
    return {
      ...line,
      pack: { unit: own.unit, holds: own.holds },
      working: `${line.working}; ${own.supplier} sells ${own.holds.toFraction(true)} ${line.unit} a ${own.unit}, so ${packs}`,
      source: `${line.source}; pack from the price list`,
    };
  });
