import { FATES, type FateWeights } from '../../parser/facts/goods/fates.ts';
import type { Weights } from '../../parser/facts/goods/score.ts';

/** Weights to two decimals, without the small ones. */
export const pruned = (weights: Weights, least: number): Map<string, number> =>
  new Map([...weights].filter(([, w]) => Math.abs(w) >= least).map(([f, w]) => [f, Number(w.toFixed(2))]));

const quoted = (text: string) => text.replace(/[\\`]|\$\{/g, '\\$&');
const written = (w: number) => String(w).replace(/^(-?)0\./, '$1.');

/** A data module with one line a feature: its weight, then its name. */
export const namingTable = (weights: Weights): string =>
  `/** Written by \`tests/learn/goods.ts\`: how much each thing seen of a name speaks for it. Weight, then what was seen. */
export const NAMING = \`
${[...weights]
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([f, w]) => quoted(`${written(w)}\t${f}`))
  .join('\n')}
\`;
`;

/** A data module with one line a feature: its weight for each fate, in order, then its name. */
export function fateTable(weights: FateWeights): string {
  const features = [...new Set(FATES.flatMap((f) => [...weights[f].keys()]))].sort();
  const line = (f: string) =>
    `${FATES.map((fate) => written(weights[fate].get(f) ?? 0).replace(/^0$/, '')).join(',')}\t${f}`;
  return `/** Written by \`tests/learn/goods.ts\`: ${FATES.join(', ')}, each weight after a comma, then what was seen. */
export const FATE = \`
${features.map((f) => quoted(line(f))).join('\n')}
\`;
`;
}
