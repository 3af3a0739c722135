import type Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import {
  actualDepth,
  engineeredMember,
  holeInJoist,
  holeInStud,
  notchInJoist,
  notchInStud,
  tooNearEdge,
} from '../boring.ts';
import {
  holeAsked,
  insideOf,
  nameOf,
  outsideOf,
  type Pipe,
  type PipeKind,
  partThroughHole,
  pipeThroughHole,
  pipeThroughPipe,
} from '../pipe.ts';
import { cannotSay, type Verdict } from '../verdict.ts';
import { allMatched, inchesOf, lumberIn, matched, type Reader, withoutLumber } from './reader.ts';

const HOLE = saying(
  '<LN>(?: inch)?(?: diameter)? (?:holes?|bore|bores)\\b|\\bholes?\\b(?: (?:is|are|of|at|was|through|in|for|the|sink|deck|counter|top|drilled))*[^.,{]{0,14}<L>|\\b(?:bor(?:ed?|ing)|drill(?:ed|ing)?)(?: it| them| a)?(?: at| out to| to)? <L>',
  'g',
);
/** The largest of several, so that a pipe named beside its hole is not taken for it. */
const holeTold = (said: Said, words: string): Fraction | null =>
  allMatched(said, HOLE, words).reduce<Fraction | null>((most, h) => (most && most.compare(h) >= 0 ? most : h), null);
/** "An inch from the bottom edge", "two inches off the top". */
const TO_EDGE = saying(
  '<LN>(?: (?:inch|inches|in))? (?:from|off|up from|below|down from) (?:the )?(?:(?:top|bottom|near|outer|lower|upper) edge|edge|top|bottom)\\b(?! of the (?:stairs?|wall|floor))',
);
const NOTCH = saying('<LN>(?: inch)?(?: deep)? notch(?:es)?\\b|\\bnotch(?:ed|es|ing)?\\b[^.{]{0,60}<LN>');
const KINDS: Readonly<Record<string, PipeKind>> = {
  pvc: 'pvc',
  abs: 'pvc',
  drain: 'pvc',
  vent: 'pvc',
  waste: 'pvc',
  copper: 'copper',
  pex: 'pex',
  cpvc: 'cpvc',
  galvanized: 'steel',
  steel: 'steel',
  'black iron': 'steel',
  'black pipe': 'steel',
};
const PIPES = saying(
  `<LN>(?: inch)?(?: schedule 40)? (${Object.keys(KINDS).join('|')})\\b|<LN>(?: inch)? (?:sleeve|conduit)\\b`,
  'g',
);

function pipesIn(said: Said): Pipe[] {
  return [...said.words.matchAll(PIPES)].flatMap((match) => {
    const size = inchesOf(said.figures[Number(match[1] ?? match[3])]);
    return size && match[2] ? [{ kind: KINDS[match[2]]!, size }] : [];
  });
}

/** Holes and notches in studs and joists, as bored or as a pipe will need. */
export const framing: Reader = (said) => {
  const { words } = said;
  const member = /\b(?:i-?joists?|i joists?|tji|truss(?:es)?|lvl|glulam|engineered)\b/.test(words)
    ? 'engineered'
    : /\bjoists?\b/.test(words)
      ? 'joist'
      : /\bstuds?\b/.test(words) || /\bbearing wall\b/.test(words)
        ? 'stud'
        : // A stud has no span.
          /\bspan\b/.test(words) && !/\b(?:header|beam|rafter|girder)s?\b/.test(words)
          ? 'joist'
          : null;
  if (!member) return [];
  // "And no notches anywhere" is of the same joist.
  const told = withoutLumber(words).replace(/\b(?:no|not|without|nothing) (?:[a-z]+ )?notch(?:es|ed)?\b/g, '');
  const notch = matched(said, NOTCH, told);
  const pipe = /\b(?:through|thru|across|bor(?:e|ed|ing)|drill(?:ed|ing)?|run(?:ning)?)\b/.test(words)
    ? pipesIn(said)[0]
    : undefined;
  const hole = /\bnotch/.test(told) ? null : (holeTold(said, told) ?? (pipe ? outsideOf(pipe) : null));
  const working =
    pipe && !holeTold(said, told) && hole ? `${nameOf(pipe)} is ${hole.toString()} in outside` : undefined;
  if (member === 'engineered')
    return notch ? [engineeredMember('notch in joist', notch)] : hole ? [engineeredMember('hole in joist', hole)] : [];
  const named = lumberIn(said);
  const depth = named && named.thick === 2 ? actualDepth(named.deep) : null;
  if (!depth) return holeAsksDepth(said, member);
  const edge = hole ? matched(said, TO_EDGE, told) : null;
  // Told to its center, half of the hole is gone.
  const wood = edge && hole && /\bcent(?:er|re)/.test(words) ? edge.sub(hole.div(2)) : edge;
  const close = wood && tooNearEdge(member, wood);
  if (close) return [close];
  if (member === 'joist')
    return [
      ...(hole ? [holeInJoist(hole, depth, working)] : []),
      ...(notch ? [notchInJoist(notch, depth, whereIn(words))] : []),
    ];
  const stud = {
    width: depth,
    bearing: bearingIn(words),
    doubled: /\b(?:doubled|double studs?|sistered)\b/.test(words),
  };
  return [...(hole ? [holeInStud(hole, stud, working)] : []), ...(notch ? [notchInStud(notch, stud)] : [])];
};

/** A hole that is asked about, in lumber whose depth nobody told. */
function holeAsksDepth(said: Said, member: 'joist' | 'stud'): Verdict[] {
  const asked = /\?|\b(?:pass|legal|ok|okay|allowed|too (?:big|large)|good to go)\b/.test(said.words);
  if (!asked || !holeTold(said, withoutLumber(said.words))) return [];
  const [of, source] = member === 'joist' ? ['hole in joist', 'IRC R502.8.1'] : ['hole in stud', 'IRC R602.6'];
  return [cannotSay(of!, `how deep the ${member} is`, source!)];
}

function bearingIn(words: string): boolean | null {
  if (/\b(?:non-? ?(?:load ?)?bearing|not (?:load ?)?bearing|isn't (?:load ?)?bearing|partition)\b/.test(words))
    return false;
  return /\b(?:bearing|exterior|outside wall)\b/.test(words) ? true : null;
}

const whereIn = (words: string): 'end' | 'middle' | 'outer' | null =>
  /\b(?:mid(?:dle|span)?|mid-? ?span|center of the span|halfway)\b/.test(words)
    ? 'middle'
    : /\b(?:at the end|end of the|over the (?:plate|beam|sill)|bearing end|at the (?:plate|beam|sill))\b/.test(words)
      ? 'end'
      : /\b(?:outer third|near the end|foot from the (?:end|wall))\b/.test(words)
        ? 'outer'
        : null;

const ASKS_HOLE = saying(
  '\\b(?:needs?|calls? for|takes?|wants?|requires?) (?:a |an )?<L>(?: inch)? (?:holes?|cut-? ?outs?)\\b',
);
const PART = saying(
  '\\b(?:shank|stem|tailpiece|nipple|bolt|rod|connector|barrel|dowel|body|spout|valve|cable|wire|sprayer|lag)\\b(?: is| are| measures| on it is)*[^.,{]{0,14}<L>|<L>(?: inch)? (?:shank|stem|tailpiece|nipple|bolt|rod|connector|barrel|dowel|lag)\\b',
);
const MADE_HOLE = saying(
  "\\bholes?\\b(?:'s| is| are|in|on|the|sink|deck|counter|top|was|drilled|there|at| )*<L>|<L>(?: inch)? holes?\\b",
);

/** A part against a hole, or a pipe inside another. */
export const parts: Reader = (said) => {
  const { words } = said;
  if (
    /\b(?:studs?|joists?|post|concrete|block|masonry|slab anchors?|tapcons?)\b/.test(words) &&
    !/\bsleeve\b/.test(words)
  )
    return [];
  const pipes = pipesIn(said);
  if (pipes.length === 2 && /\b(?:sleeve|inside|through|into|slide|fits? in)\b/.test(words))
    return pipeInPipe(pipes[0]!, pipes[1]!);
  const asked = matched(said, ASKS_HOLE);
  const rest = asked ? words.replace(ASKS_HOLE, ' ') : words;
  const hole = matched(said, MADE_HOLE, rest);
  if (!hole) return [];
  if (asked) return [holeAsked(hole, asked)];
  if (pipes.length === 1) return [pipeThroughHole(pipes[0]!, hole)];
  const part = matched(said, PART, rest);
  return part ? [partThroughHole(part, hole)] : [];
};

/** The smaller of two pipes goes through the other, whichever was named first. */
function pipeInPipe(a: Pipe, b: Pipe): Verdict[] {
  const [inner, outer] = wider(outsideOf(a), outsideOf(b)) ? [b, a] : [a, b];
  return insideOf(outer) || outsideOf(inner) ? [pipeThroughPipe(inner, outer)] : [];
}

const wider = (a: Fraction | null, b: Fraction | null) => a !== null && b !== null && a.compare(b) > 0;
