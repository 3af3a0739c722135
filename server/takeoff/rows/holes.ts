import { figureAt, lengthIn, type Said, saying } from '../reading/said.ts';
import { claim, free, type RowTold } from './row.ts';

/** "Holes 10 in across and 30 deep", "12 inch holes 3 foot deep", "six footings". */
export function holesIn(said: Said, told: RowTold): void {
  const { words } = said;
  if (!/\b(?:holes?|footings?|piers?|(?:sono)?tubes?|dig)\b/.test(words)) return;
  const wide =
    saying(
      '\\b(?:holes?|footings?|piers?|(?:sono)?tubes?)(?: (?:for|under|on|at) (?:the |a )?[a-z]+(?: [a-z]+)?)?,?(?: (?:are|is|at|of|dug|will be|all|each))* (?:about )?<LN>(?! ?(?:deep|down))(?: (?:across|wide|around|round|diameter|dia))?',
    ).exec(words) ??
    saying('<L>(?: (?:inch|in|round|diameter|wide|dia))* (?:holes?|footings?|piers?|tubes?|sonotubes?)').exec(words) ??
    saying('<LN>(?: in)? (?:across|diameter|dia|round)\\b').exec(words) ??
    // "Piers: nine of them, 10 inch, 3 foot deep".
    saying('<L>(?:,| by| x)* <LN>(?: (?:inches|inch|in|feet|foot|ft))? (?:deep|down)\\b').exec(words);
  const deep =
    saying('<LN>(?: (?:inches|inch|in|feet|foot|ft))? (?:deep|down)\\b').exec(words) ??
    saying('depth(?: of| is)? <LN>').exec(words);
  if (!wide || !deep) return;
  const [w, d] = [figureAt(said, wide[1]), figureAt(said, deep[1])];
  const diameter = lengthIn(w, 'in', 'in');
  // "10 in across and 30 deep": a bare depth is in the unit of the width, or feet where it is small.
  const depth = lengthIn(d, 'in', d.value.compare(6) <= 0 ? 'ft' : 'in');
  if (!diameter || !depth) return;
  claim(told, wide[1], deep[1]);
  told.hole = { diameter, depth };
  const counted =
    saying('(?<!x )<N>(?: [a-z]+){0,2} (?:holes|footings|piers|tubes|sonotubes|posts)\\b').exec(words) ??
    saying('\\b(?:holes|footings|piers|sonotubes)(?:,|:)? <N> of (?:them|those)\\b').exec(words);
  if (counted && free(told, counted[1]) && figureAt(said, counted[1]).value.d === 1n) {
    told.holes = figureAt(said, counted[1]).value.valueOf();
    claim(told, counted[1]);
  }
  if (/\b(?:take|less|minus|deduct|subtract|knock|pull)\b/.test(words)) {
    const refused =
      /\b(?:don't|do not|dont|not|no need to|without|never mind|ignore)\b[^.;]{0,20}\b(?:tak(?:e|ing)|deduct(?:ing)?|subtract(?:ing)?|less|post)\b/.test(
        words,
      );
    const asked = saying(
      '\\b(?:take|less|minus|deduct|subtract|knock)\\b[^.;]{0,16}(?:\\bposts?\\b|<N> ?(?:x|by) ?<N>)[^.;]{0,12}(?:\\bout\\b|\\boff\\b|$|[.,;])',
    ).exec(words);
    told.lessPost = asked !== null && !refused;
    claim(told, asked?.[1], asked?.[2]);
  }
}
