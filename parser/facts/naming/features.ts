import { type Chunk, isDeterminer, isPreposition } from '../chunks.ts';
import { isPerson, isPointer, type Talk } from '../talk.ts';
import { type Candidate, isHeading } from './candidates.ts';

/** Where a name is wanted: at a figure, at what is told to be amiss, or where talk only points. */
export interface Place {
  use: 'figure' | 'flaw' | 'pointer';
  /** The clause, and the chunk in it that is the figure, tells the flaw, or points. */
  at: number;
  k: number;
  /** Words that the figure before in the talk was given, lower case. */
  carried?: readonly string[];
  /** What the rule that found the flaw took for the thing. */
  told?: readonly Chunk[];
}

const bucket = (n: number) => (n <= 2 ? `${n}` : n <= 4 ? '3-4' : n <= 7 ? '5-7' : n <= 12 ? '8-12' : '13+');

/** Nouns that name a size or a reading by themselves, and so want to be told what of. */
const SIZE =
  /^(?:gap|width|height|depth|length|opening|clearance|reveal|overhang|slope|pitch|drop|rise|run|spacing|thickness|temp|temperature|moisture|pressure|voltage|reading|level|fall|span|setback|center|centers|centre|line|spec|distance|hole|diameter|flow|humidity|static|amps?|current)$/;
const TELLS =
  /^(?:spec|code|plate|plan|plans|drawing|drawings|print|prints|tag|sticker|paper|label|book|manual|sheet|meter|gauge|tape|level|string|laser|stick)$/;

const kindOf = (c: Chunk) =>
  SIZE.test(c.word)
    ? 'size'
    : TELLS.test(c.word)
      ? 'tells'
      : c.kind === 'term'
        ? c.term!.kind
        : c.verb
          ? 'verbish'
          : c.kind;

/** How a candidate stands to its own clause. */
function partIn(talk: Talk, c: Candidate): string {
  const { verbAt, predicate, subject } = talk.frames[c.at]!;
  if (verbAt < 0 || predicate === 'none')
    return c.from === 0 || (c.from === 1 && isDeterminer(talk.frames[c.at]!.chunks[0])) ? 'opens' : 'bare';
  if (c.until <= Math.max(verbAt, subject.length)) return c.from <= 1 ? 'subject' : 'subject-late';
  return 'object';
}

const leadOf = (chunks: readonly Chunk[], from: number) => {
  let k = from - 1;
  const article = isDeterminer(chunks[k]) ? chunks[k]!.word : '';
  if (article) k--;
  const before = chunks[k];
  return { article, prep: isPreposition(before) ? before!.word : '', before };
};

/** What stands behind a figure, as far as it tells what is measured. */
const behind = (c: Chunk | undefined) =>
  !c
    ? 'end'
    : isPreposition(c)
      ? c.word
      : /^(?:wide|tall|high|long|deep|thick|apart|out|off|low|short|square|center|centers)$/.test(c.word)
        ? c.word
        : c.kind;

/** What speaks for and against a candidate being meant at a place, each as one named sign. */
export function signsOf(talk: Talk, place: Place, c: Candidate, rank: number): string[] {
  const frame = talk.frames[place.at]!;
  const own = talk.frames[c.at]!;
  const clauses = c.at - place.at;
  const side = clauses < 0 || (clauses === 0 && c.from < place.k) ? 'before' : 'after';
  const sentences = own.sentence - frame.sentence;
  const where = clauses === 0 ? `here-${side}` : clauses < 0 ? `${Math.max(clauses, -4)}` : '+1';
  const words =
    side === 'before'
      ? frame.chunks[place.k]!.from - c.chunks.at(-1)!.until
      : c.chunks[0]!.from - frame.chunks[place.k]!.until;
  const part = partIn(talk, c);
  const kind = kindOf(c.head);
  const { article, prep, before } = leadOf(own.chunks, c.from);
  const out = [
    `where ${where}`,
    `far ${side} ${bucket(Math.max(words, 0))}`,
    `rank ${side} ${Math.min(rank, 4)}`,
    `part ${part}`,
    `part ${where} ${part}`,
    `kind ${kind}`,
    `kind ${where} ${kind}`,
    `part ${part} ${kind}`,
    `says ${own.predicate}`,
    `article ${article ? (/^an?$/.test(article) ? 'a' : article === 'the' ? 'the' : 'other') : 'none'}`,
    `size ${Math.min(c.chunks.length, 3)}`,
  ];
  if (sentences)
    out.push(
      `sentences ${Math.max(-2, Math.min(sentences, 1))}`,
      `sentences ${Math.max(-2, Math.min(sentences, 1))} ${part}`,
    );
  if (prep)
    out.push(`prep ${prep}`, `prep ${where === 'here-after' || where === 'here-before' ? where : 'other'} ${prep}`);
  else if (before?.verb) out.push('behind-verb');
  if (before?.quantity) out.push(`counted ${before.quantity.unitKind ?? 'bare'}`);
  if (own.chunks.some((x) => x.term?.kind === 'defect') && kind !== 'defect') out.push('flawed');
  if (isHeading(talk, own)) out.push('heading', `heading ${where}`);
  if (own.use) out.push(`use ${own.use}`);
  if (place.carried?.length) {
    const carried = c.chunks.some((x) => (x.owner ?? x.word).split(' ').some((w) => place.carried!.includes(w)));
    const told = clauses < 0 || side === 'before' ? carried : false;
    out.push(
      told ? 'carried' : 'not-carried',
      `${told ? 'carried' : 'not-carried'} ${where} ${subjectOf(talk, place)}`,
    );
  }
  if (place.told?.length) {
    const told = c.chunks.some((x) => place.told!.some((y) => y.start === x.start));
    out.push(told ? `told ${where}` : 'not-told', told ? `told ${kind}` : `not-told ${where}`);
  }
  if (place.use === 'pointer') pointerSigns(talk, place, c, where, part, kind, out);
  else {
    const after = behind(frame.chunks[place.k + 1]);
    const q = frame.chunks[place.k]!.quantity;
    out.push(`unit ${q?.unitKind ?? 'none'} ${kind}`, `behind ${after} ${where}`);
    hereSigns(talk, place, c, where, part, out);
    if (where === 'here-after') out.push(`after ${after} ${kind}`);
  }
  return out;
}

/** How a candidate stands to a figure or a flaw within their clause. */
function hereSigns(talk: Talk, place: Place, c: Candidate, where: string, part: string, out: string[]): void {
  const frame = talk.frames[place.at]!;
  const lead = frame.chunks[place.k - 1];
  if (where === 'here-after') out.push(c.from === place.k + 1 ? 'touches-after' : 'stands-off-after');
  if (where === 'here-before') {
    if (c.until === place.k) out.push('touches-before');
    const between = frame.chunks.slice(c.until, place.k);
    if (between.some((x) => x.quantity)) out.push('figure-between');
    if (between.length <= 2) out.push(`between ${between.map((x) => (x.verb ? x.verb.lemma : x.word)).join(' ')}`);
  }
  if (c.at === place.at && c.from <= place.k && place.k < c.until) out.push('is-flaw');
  if (lead && where !== '+1')
    out.push(`lead ${isPreposition(lead) || isDeterminer(lead) ? lead.word : kindOf(lead)} ${where}`);
  if (frame.lemma && where.startsWith('here')) out.push(`lemma ${frame.lemma} ${part}`);
  out.push(`frame ${frame.predicate} ${where}`, `subject ${subjectOf(talk, place)} ${where}`);
  if (place.k === 0) out.push(`opens-with ${where}`);
}

function pointerSigns(
  talk: Talk,
  place: Place,
  c: Candidate,
  where: string,
  part: string,
  kind: string,
  out: string[],
): void {
  const frame = talk.frames[place.at]!;
  const word = frame.chunks[place.k]!.word;
  const pointer =
    /^(?:it|it's|that|that's|this|them|'em|em|they|they're|those|these|one|ones|both)/.exec(word)?.[0] ?? 'none';
  const many = /s$/.test(c.head.word) && !/ss$/.test(c.head.word);
  const plural = /^(?:them|'em|em|they|they're|those|these|ones|both)$/.test(pointer);
  out.push(
    `points ${pointer} ${where}`,
    `points ${pointer} ${part}`,
    `number ${plural ? 'many' : pointer === 'none' ? 'none' : 'one'} ${many ? 'many' : 'one'}`,
  );
  out.push(`frame ${frame.predicate} ${kind}`, `frame ${frame.predicate} ${where}`);
  if (frame.lemma) out.push(`does ${frame.lemma} ${kind}`);
}

/** Whether the clause has a subject of its own that can be measured. */
function subjectOf(talk: Talk, place: Place): string {
  const { subject } = talk.frames[place.at]!;
  if (!subject.length) return 'none';
  return isPointer(subject)
    ? 'pointer'
    : isPerson(subject)
      ? 'person'
      : subject.some((c) => TELLS.test(c.owner ?? c.word))
        ? 'tells'
        : 'own';
}

/** What speaks for and against joining a whole to a part: "niche" to "shelf". */
export function joinSigns(talk: Talk, part: Candidate, whole: Candidate): string[] {
  const [a, b] = [kindOf(part.head), kindOf(whole.head)];
  const near =
    whole.at === part.at
      ? whole.from < part.from
        ? 'same-before'
        : 'same-after'
      : whole.at < part.at
        ? `${Math.max(whole.at - part.at, -3)}`
        : '+1';
  const out = [
    `join`,
    `join ${near}`,
    `join ${a}+${b}`,
    `join ${a}`,
    `join ${near} ${b}`,
    `join size ${Math.min(part.chunks.length, 3)}`,
    `join sizes ${Math.min(part.chunks.length, 3)}+${Math.min(whole.chunks.length, 3)}`,
  ];
  const { chunks } = talk.frames[whole.at]!;
  const link = (from: number, until: number) =>
    chunks
      .slice(from, until)
      .filter((x) => !isDeterminer(x))
      .map((x) => (x.verb ? 'verb' : isPreposition(x) ? x.word : x.kind))
      .slice(0, 3)
      .join(' ');
  if (near === 'same-after') out.push(`join links ${link(part.until, whole.from)}`);
  if (near === 'same-before') out.push(`join leads ${link(whole.until, part.from)}`);
  if (isHeading(talk, talk.frames[whole.at]!)) out.push('join heading');
  return out;
}
