import type { Clause, Fact, NoteReading, Quantity, Span, Token, TokenRange } from '../types.ts';
import type { Passage } from './passages.ts';

/** Moves a passage's reading to where its words stand in the whole file. */
export function placed(
  text: string,
  passage: Passage,
  reading: NoteReading,
  base: TokenRange & { group: number },
): NoteReading {
  const { pieces } = passage;
  /** The piece that holds a place of the passage, found by halving. */
  const pieceAt = (offset: number) => {
    let low = 0;
    let high = pieces.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (pieces[middle]!.from <= offset) low = middle;
      else high = middle - 1;
    }
    return pieces[low]!;
  };
  const startOf = (offset: number) => {
    const piece = pieceAt(offset);
    return verbatim(piece) ? Math.min(piece.start + offset - piece.from, piece.end) : piece.start;
  };
  const endOf = (offset: number) => {
    const piece = pieceAt(Math.max(offset - 1, 0));
    return verbatim(piece) ? Math.min(piece.start + offset - piece.from, piece.end) : piece.end;
  };
  const span = <T extends Span>(one: T): T => ({ ...one, start: startOf(one.start), end: endOf(one.end) });
  const quoted = <T extends Span & { quote: string }>(one: T): T => {
    const moved = span(one);
    return { ...moved, quote: text.slice(moved.start, moved.end) };
  };
  const range = <T extends TokenRange>(one: T): T => ({
    ...one,
    from: one.from + base.from,
    until: one.until + base.from,
  });
  const quantity = (q: Quantity): Quantity => ({
    ...range(quoted(q)),
    ...(q.group && { group: { ...q.group, id: q.group.id + base.group } }),
    ...(q.takenBackFrom !== undefined && { takenBackFrom: startOf(q.takenBackFrom) }),
    ...(q.replaces && { replaces: q.replaces.map(range) }),
  });
  return {
    heard: {
      text,
      tokens: reading.heard.tokens.map((t): Token => span(t)),
      repairs: reading.heard.repairs.map(span),
    },
    quantities: reading.quantities.map(quantity),
    notQuantities: reading.notQuantities.map((n) => range(quoted(n))),
    times: reading.times.map((t) => range(quoted(t))),
    terms: reading.terms.map((t) => range(quoted(t))),
    clauses: reading.clauses.map((c): Clause => range(span(c))),
    facts: reading.facts.map((f): Fact => {
      const at = Math.floor(pieceAt(f.start).at);
      return { ...quoted(f), at, ...(passage.speaker && { speaker: passage.speaker }) };
    }),
  };
}

const verbatim = (piece: Passage['pieces'][number]) => piece.end - piece.start === piece.text.length;
