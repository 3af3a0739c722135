import { stem } from '../../trade/likeness.ts';
import type { Fact, Span } from '../../types.ts';
import { firstFrom, type Talk } from '../talk.ts';
import type { SpanKind } from './features.ts';
import { type Lead, leadsIn } from './leads.ts';
import { type Scene, type Thing, thingsAround, thingsOf } from './things.ts';

/** A name that is possible for a span. Its signs are held in parts, since many names share one. */
export interface Possible {
  words: string;
  /** Its verb as the name says it; the rules' own name is all verb. */
  lead: string;
  parts: readonly (readonly string[])[];
}

/** What the rules that read a span made of it; both empty where none did. */
export interface Ruled {
  name: string;
  rule: string;
}

/** Every name that is possible for a span: the rules' own, and each verb with each thing. */
export function possibleNames(
  cut: Talk,
  span: Span,
  kind: SpanKind,
  ruled: Ruled,
  others: readonly Fact[],
): Possible[] {
  const clauses = clausesOf(cut, span);
  if (!clauses.length || CONTACTS.test(ruled.name) || COATS.test(ruled.name))
    return ruled.name ? [{ words: ruled.name, lead: ruled.name, parts: [] }] : [];
  const scene: Scene = { cut, span, kind, clauses, others };
  const { things: around, lacks } = thingsAround(scene);
  const inSpan = new Set(
    cut.text
      .slice(span.start, span.end)
      .toLowerCase()
      .split(/[^a-z0-9'-]+/)
      .map(stem),
  );
  const joint = (lead: Lead, thing: Thing) => nameSigns(lead, thing, ruledWords, inSpan, lacks);
  const out: Possible[] = ruled.name
    ? [{ words: ruled.name, lead: ruled.name, parts: [[...rulesOwn(ruled), `rule lacks ${lacks}`]] }]
    : [];
  const ruledWords = new Set(ruled.name.split(' '));
  if (kind === 'problem') {
    for (const thing of around) out.push({ words: thing.words, lead: '', parts: [thing.signs, joint(NONE, thing)] });
    return out;
  }
  for (const lead of leadsIn(cut, clauses, span, ruled.name))
    for (const thing of [...thingsOf(scene, lead, around), ...around])
      out.push({
        words: `${lead.words} ${thing.words}`.trim(),
        lead: lead.words,
        parts: [lead.signs, thing.signs, joint(lead, thing)],
      });
  return out;
}

/** Whom to call is what the task is about, and people are no things: the rules have such a name whole. */
const CONTACTS = /^(?:call|ask|text|tell|ring|phone|email|message|remind) \S/;

/** Which coat is to come is the task; no other verb says it ("replace coat"). */
const COATS = /^(?:another|second|third|final|finish|last|top) coat \S/;

const NONE: Lead = { words: '', lemma: '', place: null, signs: [] };

function clausesOf(cut: Talk, span: Span): number[] {
  const out: number[] = [];
  for (let at = firstFrom(cut.frames, span.start); at < cut.frames.length && cut.frames[at]!.start < span.end; at++)
    out.push(at);
  const before = firstFrom(cut.frames, span.start) - 1;
  return before >= 0 && cut.frames[before]!.end > span.start ? [before, ...out] : out;
}

function rulesOwn({ name, rule }: Ruled): string[] {
  const size = Math.min(name.split(' ').length, 8);
  return ['rule', `rule ${rule}`, `rule size ${size}`, ...name.split(' ').map((w) => `rule word ${w}`)];
}

/** What speaks for a verb and a thing together. */
function nameSigns(
  lead: Lead,
  thing: Thing,
  ruled: ReadonlySet<string>,
  inSpan: ReadonlySet<string>,
  lacks: string,
): string[] {
  const words = thing.words.split(' ');
  const shared = words.filter((w) => ruled.has(w)).length;
  const outside = Math.min(words.filter((w) => !inSpan.has(stem(w))).length, 4);
  const size = Math.min(words.length, 7);
  const out = [
    `by ${thing.from}`,
    `by ${thing.from} lacks ${lacks}`,
    `size ${size}`,
    `size ${size} ${thing.from}`,
    `size ${size} outside ${outside}`,
    `outside ${outside} lacks ${lacks}`,
    `as ruled ${shared === 0 ? 'none' : shared === words.length ? 'all' : 'some'} ${thing.from}`,
  ];
  const led = !lead.words ? 'none' : lead.place ? 'verb' : 'turn';
  out.push(`led ${led} ${thing.from}`, `led ${led} ${lacks} outside ${outside}`);
  if (!lead.words) return out;
  const head = thing.signs.find((s) => s.startsWith('kind ')) ?? '';
  out.push(`does ${lead.lemma} ${thing.from}`, `does ${lead.lemma} ${head}`);
  if (lead.place && thing.start !== null)
    out.push(`order ${thing.start > lead.place.start ? 'behind' : 'before'} ${thing.from}`);
  if (words.some((w) => stem(w) === stem(lead.lemma))) out.push('says its verb');
  return out;
}
