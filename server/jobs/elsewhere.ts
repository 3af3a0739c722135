import { literal } from '../../parser/literal.ts';
import { wordsOf } from '../../parser/trade/likeness.ts';
import { lowered } from '../../parser/trade/words.ts';
import type { Job } from './types.ts';

export type Named = Pick<Job, 'id' | 'name' | 'areas'>;

/** Where the words of a note belong that speaks of more than one job. */
export interface Filing {
  /** The note's words job by job, each as long as the note, what belongs elsewhere blank: offsets hold in all of them. */
  texts: Map<string, string>;
  /** "The other job" where there are several: those words stay here until somebody says which. */
  unclear: { quote: string; start: number; end: number } | null;
}

const OTHER =
  /\b(?:(?:over |back |up |out |down )?(?:at|on|for|to|from|in) )?(?:the |our |my |that )other (?:job|site|project|jobsite|job site)\b/;
const HERE =
  /\b(?:back here|here at|over here|(?:on|at|for|back (?:on|at)) this (?:job|one|site|house|place))\b|^(?:and |ok |so |but )*here\b|\bhere$/;
/** Speaks on of the place or the thing just spoken of. */
const GOES_ON =
  /\b(?:it|its|it's|that|that's|there|them|they|they're|those|same (?:place|job|house))\b|^(?:and |so |plus )*(?:needs?|gotta|got to|have to|grab|get|bring|order|pick up)\b/;
/** Words of a job's name that other jobs' names have too. */
const COMMON = wordsOf(
  'job house home place site project street st avenue ave road rd lane ln drive dr court ct circle way kitchen bathroom bath half powder laundry basement attic garage deck porch roof roofing siding fence window door floor remodel renovation addition repair refresh reno trim paint electrical plumbing tile drywall north south east west upstairs downstairs main office shop store apartment apt unit rental mr mrs ms old new family',
);

/** Words by which a job goes: what is its name's own, and no other job's. */
function callsOf(job: Named, others: readonly Named[]): string[] {
  const theirs = new Set(others.flatMap((other) => [...wordsOf(`${other.name} ${other.areas.join(' ')}`)]));
  return lowered(job.name)
    .split(/[^a-z0-9']+/)
    .map((word) => word.replace(/'s$/, ''))
    .filter((word) => {
      const [stem] = wordsOf(word);
      return word.length > 2 && stem !== undefined && !COMMON.has(stem) && !theirs.has(stem);
    });
}

/** "At Maple", "over at the Henderson place", "for the Maple street job", "Maple:"; the name alone may be a wood or a colour. */
const namedBy = (calls: readonly string[]): RegExp | null => {
  if (!calls.length) return null;
  const name = `(?:${calls.map(literal).join('|')})`;
  const place = '(?:job|house|place|site|project|street|st|avenue|ave|road|rd|lane|ln|drive|court)';
  return new RegExp(
    `\\b(?:over |back |up |out |down )?(?:at|from) (?:the )?(?:[a-z]+ )?${name}(?:'s)?(?: ${place})*\\b|\\b(?:(?:on|for|to|in) )?(?:the )?${name}(?:'s)? ${place}(?: ${place})*\\b|\\b(?:for|to) ${name}(?:'s)?(?=[,.;:]|$)|^${name}(?:'s)?(?=:)`,
  );
};

/** Files a note's sentences under the jobs that they name; null where all of it is about the job that it was said to. */
export function filingOf(text: string, here: Named, others: readonly Named[]): Filing | null {
  if (!others.length) return null;
  const names = others.map((job) => ({
    job,
    says: namedBy(callsOf(job, [here, ...others.filter((o) => o !== job)])),
  }));
  const home = namedBy(callsOf(here, others));
  const pieces: { job: string; start: number; end: number; cue: [number, number] | null }[] = [];
  let unclear: Filing['unclear'] = null;
  let now = here.id;
  for (const { said, start } of clausesOf(text, [OTHER, ...names.flatMap(({ says }) => says ?? [])])) {
    const named = names.flatMap(({ job, says }) => {
      const match = says?.exec(said);
      return match ? [{ job, match }] : [];
    })[0];
    const other = named ? null : OTHER.exec(said);
    const cue = named?.match ?? other ?? HERE.exec(said);
    if (named) now = named.job.id;
    else if (other && others.length === 1) now = others[0]!.id;
    else if (other) {
      now = here.id;
      unclear ??= { quote: text.slice(start, start + said.length).trim(), start, end: start + said.length };
    } else if (HERE.test(said) || home?.test(said) || !goesOn(said, here, others, now)) now = here.id;
    const at = cue ? start + cue.index : 0;
    pieces.push({ job: now, start, end: start + said.length, cue: cue ? [at, at + cue[0].length] : null });
  }
  if (!unclear && pieces.every((piece) => piece.job === here.id)) return null;
  const texts = new Map<string, string>();
  for (const job of new Set([here.id, ...pieces.map((piece) => piece.job)])) {
    const blank = pieces.flatMap((p): [number, number][] =>
      p.job === job ? (p.cue ? [p.cue] : []) : [[p.start, p.end]],
    );
    texts.set(job, blanked(text, blank));
  }
  return { texts, unclear };
}

/** The words go on about the job just spoken of: they point back, and name no room of this one. */
function goesOn(said: string, here: Named, others: readonly Named[], now: string): boolean {
  if (now === here.id) return false;
  const theirs = others.find((job) => job.id === now)!.areas;
  const names = (areas: readonly string[]) => areas.some((area) => said.includes(area.toLowerCase()));
  return names(theirs) || (!names(here.areas) && GOES_ON.test(said));
}

/** Sentences; one that tells of here and of elsewhere is cut at its "and"s: "six here and two for the other job". */
function clausesOf(text: string, elsewhere: readonly RegExp[]): { said: string; start: number }[] {
  const low = lowered(text);
  return [...low.matchAll(/[^.;!?\n]+/g)].flatMap(({ 0: raw, index }) => {
    const both = /\bhere\b/.test(raw) && elsewhere.some((cue) => cue.test(raw));
    // What is to be had is said once for all of them.
    const verb = both ? /^\s*(?:(?:and|also|so) )*(?:(?:i|we) )?(?:need|get|grab|buy|order|pick up) /.exec(raw) : null;
    const from = verb?.[0].length ?? 0;
    const pieces = both ? /(?:^|,? (?:and|but) |, )(?:(?!,? (?:and|but) |, ).)+/g : /.+/g;
    return [...raw.slice(from).matchAll(pieces)].map((piece) => {
      const lead = /^(?:[\s,]|(?:and|but) )*/.exec(piece[0])![0].length;
      return { said: piece[0].slice(lead), start: index + from + piece.index + lead };
    });
  });
}

/** Words blanked, stops and line ends left: sentences stay sentences, and every offset holds. */
export const blanked = (text: string, spans: readonly [number, number][]): string => {
  let out = text;
  for (const [start, end] of spans)
    out = out.slice(0, start) + out.slice(start, end).replace(/[^.;!?\n]/g, ' ') + out.slice(end);
  return out;
};

/** "That was for Maple", "number 7 is for the other job": words already told that belong to another job. */
export interface Refiling {
  job: string;
  /** Number on the list; null: the note before. */
  number: number | null;
}

const MOVES =
  /^(?:no|sorry|oh|actually|oops|wait)?,? ?(?:file |move |put |change )?(?:(that|that one|that last one|it|those|this|all of that|the last (?:one|note))|(?:number|no\.?|item|#) ?(\d+|[a-z]+))(?:'s|'re| is| was| were| are| goes| go| belongs| should(?: go| be)?)?(?: (?:for|to|at|on|under|with|in))* (?:the )?(.+?)[.! ]*$/;

/** What a whole note says about where earlier words belong; null where it says no such thing, or not which job. */
export function refilingIn(
  text: string,
  here: Named,
  others: readonly Named[],
  numberOf: (word: string) => number | null,
): Refiling | null {
  const [, , number, where] = MOVES.exec(lowered(text.trim())) ?? [];
  if (!where) return null;
  const words = new Set(where.split(/[^a-z0-9']+/).map((word) => word.replace(/'s$/, '')));
  const named = others.filter((job) => {
    const calls = callsOf(job, [here, ...others.filter((o) => o !== job)]);
    return calls.some((call) => words.has(call)) || where === job.name.toLowerCase();
  });
  const onlyOther = others.length === 1 && /^other (?:job|site|one|project|house|place)$/.test(where);
  const job = named.length === 1 ? named[0] : onlyOther ? others[0] : undefined;
  const rest = [...words].filter((word) => {
    const [stem] = wordsOf(word);
    return stem !== undefined && !COMMON.has(stem) && !wordsOf(job?.name ?? '').has(stem) && stem !== 'other';
  });
  if (!job || rest.length) return null;
  const count = number === undefined ? null : numberOf(number);
  return number !== undefined && count === null ? null : { job: job.id, number: count };
}
