import type { Line } from '../line.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import type { ClaimRule } from './claim.ts';

/** Who is told of: people and beasts are not measured. */
const WHO = wordSet(
  'grandson granddaughter nephew niece he she dog cat pup kid boy girl son daughter lad lass boss wife husband missus mother mum mom father dad dada grandad gramps ' +
    'nan gran grandma brother sister cousin uncle aunt apprentice fella fellow guy bloke gaffer foreman man woman lady baby horse bird',
);
/** "He's", typed without its mark too. */
const WHO_IS = wordSet("he's she's hes shes kid's dog's lad's he'll she'll who's");
/** "Im 47 not 74": of oneself, from an age on at which nobody has so many to go. */
const OWN = /^i'?m$/;
const GROWN = 16;
const BEING = wordSet('is was be being been turns turned turning pushing hit hits reached');
/** Words that may stand between. */
const BETWEEN = wordSet(
  'about only nearly just almost still now like maybe already barely over under gonna going to on will must might be close not even well at least',
);
/** What may follow an age; a noun would be counted, and "he's two short" is. */
const AFTER = wordSet(
  'and but n not so now then next this last years yet already still today tomorrow yesterday in if when with or on monday tuesday wednesday thursday friday saturday sunday',
);

/** "He's fifty six", "my old man turned seventy", "their dog is 14": an age. */
export const age: ClaimRule = (line, i) => {
  const number = line.number(i);
  if (number?.shape !== 'whole' || number.article || number.n > 110) return null;
  const next = line.tokens[number.until];
  if (next?.kind === 'word' && !AFTER.has(next.word)) return null;
  if (next && /^["'%”’/x×-]$/.test(next.text)) return null;
  if (unitAt(line, number.until, number)) return null;
  let k = i - 1;
  while (k > i - 6 && BETWEEN.has(line.word(k))) k--;
  if (OWN.test(line.word(k)) && number.n >= GROWN && !/^(?:in|on|with)$/.test(next?.word ?? '') && k === i - 1)
    return { until: number.until, kind: 'idiom' };
  if (WHO_IS.has(line.word(k))) return { until: number.until, kind: 'idiom' };
  // "I'm turning twenty".
  if (/^turn(?:ing|ed)$/.test(line.word(k)) && /^i(?:'m|m)?$/.test(line.word(k - 1)))
    return { until: number.until, kind: 'idiom' };
  // "Since I was sixteen".
  const own = line.word(k) === 'was' && line.word(k - 1) === 'i' && /^(?:since|when)$/.test(line.word(k - 2));
  if (own) return { until: number.until, kind: 'idiom' };
  // "My nan's ninety next week", "been married twenty two this spring".
  if (WHO.has(line.bare(k)) && line.word(k).endsWith("'s") && next !== undefined)
    return { until: number.until, kind: 'idiom' };
  if (line.word(k) === 'married') return { until: number.until, kind: 'idiom' };
  return BEING.has(line.word(k)) && isSomebody(line, k - 1) ? { until: number.until, kind: 'idiom' } : null;
};

function isSomebody(line: Line, at: number): boolean {
  let k = at;
  while (k > at - 3 && /^(?:will|must|might|just|only|gonna|going|to|has|already|be)$/.test(line.word(k))) k--;
  return WHO.has(line.word(k)) || WHO_IS.has(line.word(k));
}
