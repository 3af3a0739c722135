import type { Frame } from '../frames.ts';
import { nounPhraseFrom } from '../talk.ts';

const DIMENSION_NAMES: Readonly<Record<string, string>> = {
  wide: 'width',
  tall: 'height',
  high: 'height',
  long: 'length',
  deep: 'depth',
  thick: 'thickness',
  showing: 'exposure',
  apart: 'spacing',
};
const KIND_NAMES: Readonly<Record<string, string>> = {
  temperature: 'temperature',
  pressure: 'pressure',
  voltage: 'voltage',
  slope: 'slope',
  torque: 'torque',
  area: 'area',
  percent: 'moisture',
};

/** What of a thing the figure at chunk `k` tells, as far as its own words say: `width`, `temperature`, `spacing`. */
export function kindOfMeasure(frame: Frame, k: number): string | null {
  const { chunks } = frame;
  const q = chunks[k]!.quantity!;
  const behind = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)).find((c) => DIMENSION_NAMES[c.word]);
  if (behind) return DIMENSION_NAMES[behind.word]!;
  if (q.onCenter) return 'spacing';
  // "Sixty above the floor", "30 off the slab".
  const from = chunks.slice(k + 1, k + 6);
  const level = from.findIndex((c) =>
    /\b(?:floor|slab|subfloor|tile|counter|countertop|deck|grade|ground|nosings?)\b/.test(c.word),
  );
  if (q.unitKind === 'length' && /^(?:above|off|up|from)$/.test(from[0]?.word ?? '') && level > 0 && level <= 4)
    return 'height';
  return KIND_NAMES[q.unitKind ?? ''] ?? null;
}
