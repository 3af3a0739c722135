import type { Fact, Span } from '../../types.ts';
import { columns, dot, type Weights } from '../../weights.ts';
import { agreedName } from '../agreed.ts';
import { plainName } from '../plainNames.ts';
import type { Talk } from '../talk.ts';
import { KINDS, type SpanKind } from './features.ts';
import { NAMES } from './namesTable.ts';
import { possibleNames, type Ruled } from './possible.ts';

/** Found on notes left out of the learning. */
const FLATTER = 1.5;

let weights: Record<SpanKind, Weights> | undefined;

/**
 * The name of what a span is about that agrees best with all that are likely: a thing, or work led by its verb. Empty where
 * nothing near has a name.
 *
 * @param ruled what the rules made of the span
 * @param others facts that the note tells besides
 */
export function nameIn(cut: Talk, span: Span, kind: SpanKind, ruled: Ruled, others: readonly Fact[]): string {
  weights ??= columns(NAMES, KINDS);
  const own = weights[kind];
  // Many names share a part: each part is weighed once.
  const weighed = new Map<readonly string[], number>();
  const weigh = (signs: readonly string[]) => {
    const weight = weighed.get(signs) ?? dot(own, signs);
    weighed.set(signs, weight);
    return weight;
  };
  const names = possibleNames(cut, span, kind, ruled, others).map(({ words, lead, parts }) => ({
    words: plainName(words),
    lead,
    weight: parts.reduce((sum, signs) => sum + weigh(signs), 0),
  }));
  return agreedName(names, cut.text.slice(span.start, span.end), FLATTER)?.words ?? '';
}
