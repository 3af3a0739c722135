import type { Term, Token } from '../types.ts';
import { costOf } from './channel.ts';
import type { Way } from './names.ts';
import { soundOf, soundsOf, soundsOfName } from './sounds.ts';

/** The form of the term that sounds most like what was heard: "pecks elbows" is `pex elbows`, not `elbow`. */
export function meantBy(heard: string, term: Term): string {
  const said = soundsOf(heard.split(/[\s-]+/));
  let best = term.name;
  let least = Number.POSITIVE_INFINITY;
  for (const way of [term.name, ...(term.also ?? [])]) {
    const cost = costOf(soundsOfName(way.split(/[\s-]+/)), said);
    if (cost < least - TIE) {
      best = way;
      least = cost;
    }
  }
  return best;
}

/** What sounds the same is written as the term is. */
const TIE = 0.02;

const meants = new WeakMap<Way, string>();

/** How a name is written: a listed mishearing is put right as the form of its term that sounds most like it. */
export function meantOf(way: Way): string {
  if (!way.listed) return way.words;
  let meant = meants.get(way);
  if (meant === undefined) {
    meant = meantBy(way.listed, way.term);
    meants.set(way, meant);
  }
  return meant;
}

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
  if (!/[^s']s$/.test(heard) || /s$/.test(meant)) return meant;
  const last = soundOf(meant.slice(meant.search(/[^\s-]+$/)));
  const said = soundOf(heard);
  if (costOf(`${last}s`, said) >= costOf(last, said)) return meant;
  return /(?:x|z|sh|ch)$/.test(meant) ? `${meant}es` : `${meant}s`;
}
