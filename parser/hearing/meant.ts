import { JaroWinklerDistance } from 'natural/lib/natural/distance/index.js';
import type { Term, Token } from '../types.ts';
import { costOf } from './channel.ts';
import type { Way } from './names.ts';
import { soundOf } from './sounds.ts';

/** A spelling this like the one heard is the same word; below it, only the sound agrees by chance. */
export const LIKE = 0.89;

/** The form of the term that sounds most like what was heard: "pecks elbows" is `pex elbows`, not `elbow`. */
export function meantBy(heard: string, term: Term): string {
  const ways = [term.name, ...(term.also ?? [])];
  const like = (way: string) => JaroWinklerDistance(way.replace(/[\s-]/g, ''), heard.replace(/[\s-]/g, ''));
  const best = (some: readonly string[]) => some.reduce((a, b) => (like(b) > like(a) ? b : a));
  const count = heard.split(/[\s-]+/).length;
  const same = ways.filter((way) => way.split(/[\s-]+/).length === count);
  const likest = best(ways);
  return like(likest) > LIKE || !same.length ? likest : best(same);
}

/** How a name is written: a listed mishearing is put right as the form of its term that sounds most like it. */
export const meantOf = ({ words, term, listed }: Way): string => (listed ? meantBy(listed, term) : words);

/** The meant words in the places of the heard ones; where their counts differ they share the whole span. */
export function meantTokens(heardTokens: readonly Token[], meant: string, heard: string): Token[] {
  const [first, last] = [heardTokens[0]!, heardTokens.at(-1)!];
  const words = meant.split(/[\s-]+/);
  return words.map((word, k) => {
    const ending = k === words.length - 1 && /'s$/i.test(heard) && !word.endsWith("'s") ? "'s" : '';
    const own = words.length === heardTokens.length ? heardTokens[k]! : null;
    return {
      kind: 'word',
      text: own?.text ?? heard,
      word: word + ending,
      start: own?.start ?? first.start,
      end: own?.end ?? last.end,
      spaced: own?.spaced ?? (k === 0 ? first.spaced : true),
    };
  });
}

/** "Ballusters" were several: the meant word ends as the heard one sounds. */
export function asMany(meant: string, heard: string): string {
  if (!/[^s']s$/.test(heard) || /[sx]$/.test(meant)) return meant;
  const last = soundOf(meant.slice(meant.search(/[^\s-]+$/)));
  const said = soundOf(heard);
  return costOf(`${last}s`, said) < costOf(last, said) ? `${meant}s` : meant;
}
