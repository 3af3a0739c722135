import type { Span } from '../../types.ts';
import { type Chunk, isCopula, isModal, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, type Talk } from '../talk.ts';
import { formsOf, verbOf } from '../verbs.ts';
import { CONJUNCTIONS, HAVES, IN_PLACE, SUBORDINATORS } from '../words.ts';

/** A verb that the name of some work may begin with, in base form with its particle ("take out"). */
export interface Lead {
  words: string;
  lemma: string;
  /** Where it stands in the talk; null for what only a turn of phrase tells ("the fronts are on": `install`). */
  place: { at: number; start: number; until: number } | null;
  signs: readonly string[];
}

/** So many verbs of a span are weighed; run-on spans hold more, and name the work early. */
const MOST = 5;

/**
 * Every verb that may lead the name of a span, and "" for a name without one.
 *
 * @param clauses positions of the clauses that the span lies in
 * @param byRule the name that the rules gave
 */
export function leadsIn(cut: Talk, clauses: readonly number[], span: Span, byRule: string): Lead[] {
  const told = clauses.flatMap((at) => verbsOf(cut.frames[at]!, at, span)).slice(0, MOST);
  const turns = clauses.flatMap((at) => turnsOf(cut.frames[at]!, span));
  const [first = ''] = byRule.split(' ');
  const out: Lead[] = [
    {
      words: '',
      lemma: '',
      place: null,
      signs: ['verb none', `verb none of ${told.length}`, ...(turns.length ? ['verb none turn'] : [])],
    },
    ...told.map((lead, nth) => ({
      ...lead,
      signs: [...lead.signs, `verb nth ${nth}`, `verb nth ${nth} of ${told.length}`, ...ruled(lead, first)],
    })),
  ];
  for (const lead of turns)
    if (!out.some((l) => l.words === lead.words)) out.push({ ...lead, signs: [...lead.signs, ...ruled(lead, first)] });
  const verb = verbOf(first);
  if (verb?.forms.has('base') && !out.some((l) => l.lemma === first))
    out.push({ words: first, lemma: first, place: null, signs: ['verb of rule', `verb of rule ${first}`] });
  return out;
}

const ruled = ({ lemma }: Lead, first: string) => [`verb ${!first ? 'no' : lemma === first ? 'same' : 'other'} rule`];

const within = (c: Chunk, span: Span) => c.start >= span.start && c.end <= span.end;

/** What people think, want or say of work is none. */
const NO_WORK = new Set(
  'be have let know think guess say figure reckon want need like love hope happen cost mean remember worry care believe mind swear feel seem sound trust notice wait'.split(
    ' ',
  ),
);

function verbsOf(frame: Frame, at: number, span: Span): Lead[] {
  return frame.chunks.flatMap((c, k) => {
    const { verb } = c;
    if (
      !verb ||
      !within(c, span) ||
      isCopula(c) ||
      isModal(c) ||
      HAVES.has(c.word) ||
      NO_WORK.has(verb.lemma) ||
      (isNounTerm(c) && k !== frame.verbAt)
    )
      return [];
    const part = /\s/.test(verb.lemma) ? null : particleOf(frame.chunks, k);
    const words = part === null ? verb.lemma : `${verb.lemma} ${frame.chunks[part]!.word}`;
    const main = k === frame.verbAt ? 'main' : 'side';
    const before = frame.chunks[k - 1];
    return [
      {
        words,
        lemma: verb.lemma,
        place: { at, start: c.start, until: part === k + 1 ? k + 2 : k + 1 },
        signs: [
          `verb ${main}`,
          `verb ${main} ${frame.predicate}`,
          `verb form ${formsOf(verb)} ${main}`,
          `verb use ${verb.use} ${main}`,
          `verb says ${words}`,
          `verb lemma ${verb.lemma} ${frame.predicate}`,
          `verb behind ${before ? (before.kind === 'word' ? before.word : before.kind) : '#'}`,
          ...(part === null ? [] : ['verb particle']),
          ...(c.kind === 'term' ? [`verb term ${c.term!.kind}`] : []),
        ],
      },
    ];
  });
}

const PARTICLE = /^(?:in|on|up|down|off|out|over|back|apart|away|together)$/;
/** Verbs that mean their work only with the particle that follows, whatever comes behind it: "took off the trim". */
const PHRASAL =
  /^(?:(?:take|put|pull|tear|rip|cut|knock|bring|send|carry) (?:in|on|up|down|off|out|back|apart|away)|(?:shut|turn|cap|mask|drop|sign|finish|rinse|shave|seal|tape|block|break) off|(?:turn|tack|stick|throw) on|(?:clean|touch|open|close|wrap|pick|set|hook|patch|button|tighten|snug|dig|tie|fix|bolt|line|blow|fill|sweep|make|tape|free|beef|jack|plug|call|start|finish|shim|square|roll|mud|build|back) up|(?:screw|glue|sand|lay|nail|tie|grind|wipe|hose|strip|drain|knock|fold) down|(?:swap|change|switch|trim|frame|block|lay|mark|roll|clean|dig|drill|blow|snake|square|sort|fish|flush|float|drain|figure|fur|rout|clear|air|hand|measure|iron) out|(?:frame|rough|box|fill|close|block|tie|screw|plug|cut|wire|brush|fit|work|dry|drop) in|(?:come|go|set|bend|lay|screw|call|give) back|(?:go|skim|tape|patch|paint) over|(?:screw|bolt|glue|put|clamp) together)$/;

/** Where the particle of a verb stands: behind it, or behind what it is done to ("cut that piece off"). */
function particleOf(chunks: readonly Chunk[], k: number): number | null {
  const { lemma } = chunks[k]!.verb!;
  const next = chunks[k + 1];
  if (next && PARTICLE.test(next.word) && (PHRASAL.test(`${lemma} ${next.word}`) || closes(chunks[k + 2])))
    return k + 1;
  for (let j = k + 2; j <= k + 5 && j < chunks.length; j++) {
    const c = chunks[j]!;
    if (c.kind === 'mark' || c.kind === 'break' || (c.verb && !isNounTerm(c))) return null;
    if (PARTICLE.test(c.word) && closes(chunks[j + 1])) return j;
  }
  return null;
}

const closes = (c: Chunk | undefined) =>
  !c ||
  c.kind === 'mark' ||
  c.kind === 'break' ||
  c.kind === 'time' ||
  CONJUNCTIONS.has(c.word) ||
  SUBORDINATORS.has(c.word);

/** Work told without its verb: "the fronts are on", "popcorn's off", "trim goes up friday", "back monday". */
function turnsOf(frame: Frame, span: Span): Lead[] {
  const chunks = frame.chunks.filter((c) => within(c, span));
  const out: Lead[] = [];
  const turn = (words: string, sign: string) =>
    out.push({
      words,
      lemma: words.split(' ')[0]!,
      place: null,
      signs: ['verb turn', `verb turn ${words}`, `verb turn ${sign} ${frame.predicate}`],
    });
  const placed = chunks.find((c, k) => k > 0 && (IN_PLACE.has(c.word) || IN_PLACE.has(c.owner ?? '')));
  const moves = /^(?:go|come)$/.test(frame.lemma ?? '');
  if (placed && (frame.predicate === 'copula' || frame.predicate === 'none' || moves)) {
    const { word } = placed;
    const away = /^(?:off|out)$/.test(word) || (word === 'down' && frame.lemma === 'come');
    if (away) turn(`take ${word}`, word);
    else turn(/^(?:done|finished|complete|completed)$/.test(word) ? 'finish' : 'install', word);
  }
  if (chunks.some((c) => c.word === 'back'))
    turn(isPerson(frame.subject) || !frame.subject.length ? 'come back' : 'take back', 'back');
  if (chunks.some((c) => /^(?:new|replacement|needs?|wants?|fresh|another)$/.test(c.word))) turn('replace', 'new');
  return out;
}
