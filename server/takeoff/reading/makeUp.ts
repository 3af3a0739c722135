import { feet, feetText } from './lengths.ts';
import { figureAt, type Said, saying } from './said.ts';
import type { MakeUp, Shape } from './shapes.ts';

const PLACE =
  '((?:cable |wire |pipe )?ends?|box(?:es)?|devices?|outlets?|switch(?:es)?|drops?|cans?|lights?|fixtures?|openings?|connections?|joints?|fittings?|couplings?|elbows?|turns?|panel|service|breaker box|equipment|unit|appliance)';

const AT_FITTING = /joint|fitting|coupling|elbow|turn|connection/;

/** "A foot at every cable end in a box and three foot at the panel", "8 in a box". Claims its figures. */
export function makeUpIn(said: Said, used: Set<number>): MakeUp[] {
  const out: MakeUp[] = [...eachOf(said, used), ...endsOfEach(said, used)];
  const pattern = saying(
    `<L>(?: of)?(?: (?:slack|extra|wire|cable|make ?up|tail|spare|more))*(?: (?:at|in|on|for|per|a|to|of|into))? (?:(?:each|every|the|all|both|a|per|one) )*${PLACE}\\b`,
    'g',
  );
  for (const m of said.words.matchAll(pattern)) {
    const length = feet(said, figureAt(said, m[1]), null);
    if (!length || length.compare(15) > 0 || used.has(Number(m[1])) || / to (?:the )?$/.test(m[0])) continue;
    // "5 ft tail at both ends on every wire" is none of the conduit.
    if (
      /^ (?:on|of|for) (?:every|each|all the|the) (?:wires?|conductors?)\b/.test(
        said.words.slice(m.index + m[0].length),
      )
    ) {
      used.add(Number(m[1]));
      continue;
    }
    const place = m[2]!;
    const once = /^(?:panel|service|breaker box|equipment|unit|appliance)/.test(place);
    const at = once ? 'once' : /ends?$/.test(place) ? 'end' : AT_FITTING.test(place) ? 'fitting' : 'box';
    if (!once && !/\b(?:each|every|per|all|both|a)\b/.test(m[0].slice(m[0].indexOf('}')))) continue;
    out.push({ length, at, count: at === 'end' || once ? null : countOf(said, place, used) });
    used.add(Number(m[1]));
  }
  return out;
}

/** "Two foot at each of five boxes". */
const EACH_OF = saying(
  `<L>(?: of)?(?: (?:slack|extra|wire|cable|make ?up|tail|spare|more))* (?:at|in|on|for) (?:each|every|all|both)(?: of)?(?: the)? (?:<K>|<NC>(?: (?:device|outlet|switch|junction))? ${PLACE}\\b)`,
  'g',
);

function eachOf(said: Said, used: Set<number>): MakeUp[] {
  return [...said.words.matchAll(EACH_OF)].flatMap((m): MakeUp[] => {
    const length = feet(said, figureAt(said, m[1]), null);
    const counted = figureAt(said, m[2] ?? m[3]);
    const place = m[4] ?? counted.unit!;
    if (!length || length.compare(15) > 0 || used.has(Number(m[1])) || counted.value.d !== 1n) return [];
    if (m[2] && counted.unit !== 'box') return [];
    used.add(Number(m[1])).add(Number(m[2] ?? m[3]));
    return [{ length, at: AT_FITTING.test(place) ? 'fitting' : 'box', count: counted.value.valueOf() }];
  });
}

const AN_END = saying(
  '<L>(?: of)?(?: (?:slack|extra|wire|cable|make ?up|tail|spare))* (?:at|in|on|for) (?:the )?[a-z]+ ends?\\b',
  'g',
);

/** "Three foot at the panel end and two at the box end of every one": once a run, each. */
function endsOfEach(said: Said, used: Set<number>): MakeUp[] {
  if (!/\bends? of (?:each|every|all)\b/.test(said.words)) return [];
  return [...said.words.matchAll(AN_END)].flatMap((m): MakeUp[] => {
    const length = feet(said, figureAt(said, m[1]), null);
    if (!length || length.compare(15) > 0 || used.has(Number(m[1]))) return [];
    used.add(Number(m[1]));
    return [{ length, at: 'run', count: null }];
  });
}

/** "So five boxes", "six fittings". */
function countOf(said: Said, place: string, used: Set<number>): number | null {
  const stem = place.replace(/(?<=x|ch)es$|s$/, '');
  const m = saying(`<NCK>(?: (?:device|outlet|switch|junction|plastic|metal|of them))* ?(?:${stem}(?:e?s)?)?`, 'g');
  for (const found of said.words.matchAll(m)) {
    const figure = figureAt(said, found[1]);
    if (used.has(Number(found[1])) || !(figure.unit === stem || found[0].includes(stem)) || figure.value.d !== 1n)
      continue;
    used.add(Number(found[1]));
    return figure.value.valueOf();
  }
  return null;
}

/** What make-up comes to over so many runs, as shapes of their own: a run from a panel has one end in a box. */
export function makeUpShapes(makeUp: readonly MakeUp[], runs: number): Shape[] {
  const panel = makeUp.some((m) => m.at === 'once');
  return makeUp.map((told) => {
    const { length, at } = told;
    const times = timesOf(told, runs, panel);
    const of = at === 'once' ? 'at the panel' : `${times} ${at}${at === 'box' ? 'es' : 's'}`;
    return {
      kind: 'run',
      sides: [length],
      amount: null,
      count: times,
      working: at === 'once' ? `${feetText(length)} ${of}` : `${of} x ${feetText(length)}`,
    };
  });
}

/** How often a make-up comes over so many runs. */
function timesOf({ at, count }: MakeUp, runs: number, panel: boolean): number {
  if (at === 'once') return 1;
  if (count !== null) return count;
  if (at === 'end') return 2 * runs - (panel ? 1 : 0);
  return at === 'fitting' ? Math.max(1, runs - 1) : runs;
}
