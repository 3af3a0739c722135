import type { ComputedLine, PackFor } from '../types.ts';

export { packsSaid } from './said.ts';
export { packsThere } from './there.ts';

/** The first that knows the goods speaks. */
export const firstOf =
  (...sources: readonly (PackFor | undefined)[]): PackFor =>
  (item, size, unit) => {
    for (const source of sources) {
      const pack = source?.(item, size, unit);
      if (pack) return pack;
    }
    return null;
  };

/** `Ridge Lumber sells 25 each a box`, `25 a box as said`. */
export const packText = ({ unit, holds, supplier }: NonNullable<ReturnType<PackFor>>, of: string): string => {
  const amount = `${holds.toFraction(true)} ${of === 'each' ? '' : `${of} `}a ${unit}`;
  return supplier ? `${supplier} sells ${amount}` : `${amount} as said`;
};

/** Lines whose pack nobody said for them, in the packs that are known for such goods. */
export const inPacks = (lines: readonly ComputedLine[], packFor: PackFor): ComputedLine[] =>
  lines.map((line) => {
    const own = line.packAssumed || line.pack === null ? packFor(line.item, line.size, line.unit) : null;
    if (!own) return line;
    const packs = line.amount.div(own.holds).ceil().toFraction();
    return {
      ...line,
      pack: { unit: own.unit, holds: own.holds },
      working: `${line.working}; ${packText(own, line.unit)}, so ${packs}`,
      source: own.supplier ? `${line.source}; pack from the price list` : line.source,
    };
  });
