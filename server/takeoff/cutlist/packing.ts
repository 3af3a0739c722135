/** Pieces into sticks, in whole numbers. A piece's length and a stick's each carry one kerf. */

export interface Bin {
  length: number;
  cuts: number[];
}

/** Longest first into the tightest stick that has room, a new one of `stock` where none has: always an answer. */
export function longestFirst(
  pieces: readonly number[],
  onHand: readonly number[],
  stock: number | null,
): { bins: Bin[]; fits: boolean } {
  const bins = onHand.map((length) => ({ length, cuts: [] as number[], room: length }));
  let fits = true;
  for (const piece of pieces) {
    let best: (typeof bins)[number] | null = null;
    for (const bin of bins) if (bin.room >= piece && (!best || bin.room < best.room)) best = bin;
    if (!best && stock !== null) {
      best = { length: stock, cuts: [], room: stock };
      bins.push(best);
    }
    if (!best) {
      fits = false;
      continue;
    }
    best.cuts.push(piece);
    best.room -= piece;
  }
  return { bins: bins.map(({ length, cuts }) => ({ length, cuts })), fits };
}

/**
 * All pieces (longest first) into just these sticks: the cuts of each stick in their order, null where it cannot be
 * done, `unknown` where the search ran too long. Stick by stick, every full filling is tried; what is left must fit in
 * the room that is left. `mostSteps` are looked at before it stops claiming a proof.
 */
export function fillSticks(
  pieces: readonly number[],
  sticks: readonly number[],
  mostSteps: number,
): number[][] | 'unknown' | null {
  const quick = longestFirst(pieces, sticks, null);
  if (quick.fits) return quick.bins.map((b) => b.cuts);
  const sizes = [...new Set(pieces)];
  const counts = sizes.map((s) => pieces.filter((p) => p === s).length);
  const order = sticks.map((_, k) => k).sort((a, b) => sticks[b]! - sticks[a]!);
  const lengths = order.map((k) => sticks[k]!);
  const failed = new Set<string>();
  const done: number[][] = [];
  let steps = 0;

  const search = (at: number, left: readonly number[]): boolean => {
    const open = left.reduce((sum, n, i) => sum + n * sizes[i]!, 0);
    if (open === 0) return true;
    const room = lengths.slice(at).reduce((a, b) => a + b, 0);
    if (open > room || steps > mostSteps) return false;
    const key = `${at}:${left.join()}`;
    if (failed.has(key)) return false;
    // Among equal sticks the longest piece left must go somewhere: it may as well be here.
    const alike = lengths.at(-1) === lengths[at];
    for (const cut of fillings(lengths[at]!, left, room - open, alike)) {
      done.push(cut);
      const rest = left.map((n, i) => n - cut[i]!);
      if (search(at + 1, rest)) return true;
      done.pop();
    }
    failed.add(key);
    return false;
  };

  /** Ways to fill one stick, fullest first, that could take no further piece and waste no more than `spare`. */
  const fillings = (room: number, left: readonly number[], spare: number, withLongest: boolean): number[][] => {
    const out: { cut: number[]; rest: number }[] = [];
    const first = left.findIndex((n) => n > 0);
    const cut = sizes.map(() => 0);
    const grow = (i: number, rest: number): void => {
      if (++steps > mostSteps) return;
      if (i === sizes.length) {
        const more = sizes.some((s, k) => cut[k]! < left[k]! && s <= rest);
        if (!more && rest <= spare && !(withLongest && cut[first] === 0)) out.push({ cut: [...cut], rest });
        return;
      }
      for (let n = Math.min(left[i]!, Math.floor(rest / sizes[i]!)); n >= 0; n--) {
        cut[i] = n;
        grow(i + 1, rest - n * sizes[i]!);
      }
      cut[i] = 0;
    };
    grow(0, room);
    return out.sort((a, b) => a.rest - b.rest).map((o) => o.cut);
  };

  if (!search(0, counts)) return steps > mostSteps ? 'unknown' : null;
  const cuts: number[][] = sticks.map(() => []);
  done.forEach((cut, k) => {
    cuts[order[k]!] = cut.flatMap((n, i) => Array<number>(n).fill(sizes[i]!));
  });
  return cuts;
}
