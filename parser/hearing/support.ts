import { workAt } from '../trade/work.ts';
import type { Term, TermKind, Token, Vocabulary } from '../types.ts';
import { said } from './said.ts';

/** How far a neighbour may stand and still support a repair. */
const REACH = 6;
/** A unit stands close before its goods: "two tubes of white cock". */
const UNIT_REACH = 3;

/** Verbs, places and units that go with one counter's goods, beside the goods themselves. Common practice, no source. */
const CUES: Readonly<Record<string, ReadonlySet<string>>> = Object.fromEntries(
  Object.entries({
    tile: 'tile tiles tiling grouted joints trowel backsplash shower pan mortar setting spacer lippage sealer mosaic bag bags sanded unsanded floor',
    paint:
      'paint painted primer primed coat coats bead tube tubes gun trim seam seams gap sand sanded holes nail brush gallon paintable tub backsplash gaps joint',
    plumbing:
      'pipe leak leaks leaking drip drips drain sink toilet valve water supply tub faucet shower trap strainer crimp fitting fittings copper solder lav vent inch plumber elbow elbows seat bowl tank reset repipe branch',
    electrical:
      'wire wires wiring circuit panel amp amps switch outlet breaker box light fixture gfci trips dead electrician volts dryer neutral ground conduit',
    lumber:
      'floor framing frame header subfloor deck beam board boards nail nails screw screws sister sistered notched rotted rotten wall sheet sheets foot bay rail stair tub under lumber stud studs',
    drywall: 'drywall sheet sheets mud tape sand board ceiling wall hang hung patch corner screw screws bucket skim',
    doors: 'door doors hinge hinges strike latch lock jamb casing frame knob handle window windows trim exterior swing',
    flooring: 'floor floors plank planks laminate vinyl carpet stair tread strip transition underlayment door',
    hardware: 'screw screws bolt bolts nail nails box drill anchor anchors wall',
    concrete: 'concrete footing slab pour poured form forms rebar truck bag bags wire mesh',
    roofing: 'roof gutter gutters shingle shingles eave ridge flashing fascia soffit vent drip edge rotten rotted leak',
    hvac: 'duct furnace vent register thermostat heat air filter fan return hall wire',
    landscape: 'fence deck gravel soil yard pavers post posts patio drain',
    appliances: 'sink dishwasher range fridge kitchen hums hookup cord install hook under',
  }).map(([counter, words]) => [counter, new Set(words.split(' '))]),
);

const FEET = ['ft', 'feet', 'foot'];

/** The nearest word within reach for which `test` holds; never one of the words in question. */
function near(
  tokens: readonly Token[],
  from: number,
  until: number,
  test: (token: Token, at: number) => boolean,
): string | null {
  for (let d = 1; d <= REACH; d++) {
    for (const at of [from - d, until - 1 + d]) {
      const token = tokens[at];
      if (token?.kind === 'word' && !token.skip && test(token, at)) return token.word;
    }
  }
  return null;
}

/** A neighbour that goes with this very term: goods of its counter, its unit of sale, or a word of that counter. */
export function relatedTo(
  term: Term,
  tokens: readonly Token[],
  from: number,
  until: number,
  vocabulary: Vocabulary,
): string | null {
  const cues = CUES[term.counter ?? ''];
  const units = new Set(
    (term.soldBy ?? []).filter((u) => u !== 'each').flatMap((u) => (u === 'ft' ? FEET : [u, `${u}s`, `${u}es`])),
  );
  return near(tokens, from, until, (token, at) => {
    if (cues?.has(token.word) || (at < from && at >= from - UNIT_REACH && units.has(token.word))) return true;
    const other = vocabulary.match(tokens, at)?.term;
    if (!other || other === term || other.kind === 'area' || other.kind === 'role') return false;
    return term.counter ? other.counter === term.counter : other.counter !== undefined;
  });
}

/** Words that everyday talk has too: a colour or a flaw beside it makes no word one of the trade. */
const EVERYDAY = new Set<TermKind>(['area', 'role', 'finish', 'defect']);

/** A thing of the trade as neighbour: enough where what was heard is no English at all. */
export function tradeNear(
  tokens: readonly Token[],
  from: number,
  until: number,
  vocabulary: Vocabulary,
): string | null {
  return near(tokens, from, until, (_, at) => {
    const term = vocabulary.match(tokens, at)?.term;
    return term !== undefined && !EVERYDAY.has(term.kind);
  });
}

/** Any word of the trade as neighbour, flaws and colours too: for what sounds the very same and is no English. */
export const anyNear = (tokens: readonly Token[], from: number, until: number, vocabulary: Vocabulary): string | null =>
  near(tokens, from, until, (_, at) => vocabulary.match(tokens, at) !== null);

/** How far before its thing a verb stands: "cope the long bass boards". */
const VERB_REACH = 4;

/** A verb of the trade shortly before, whose thing the words may be: "prime the sofits". */
export function workBefore(tokens: readonly Token[], from: number, vocabulary: Vocabulary): string | null {
  for (let at = from - 1; at >= Math.max(0, from - VERB_REACH); at--) {
    const { kind, word } = tokens[at]!;
    if (kind === 'mark' || kind === 'break') return null;
    if (workAt(tokens, at, vocabulary)) return word;
  }
  return null;
}

/** How many words either way tell whose talk it is. */
const TALK_REACH = 8;

/** A few words tell little: so many of the crews' own are taken as said besides. */
const GRANTED = 1;

/** How much of the talk around some words is in words that crews use, 0 to 1; 1 where nothing stands around. */
export function crewTalk(tokens: readonly Token[], from: number, until: number): number {
  let [all, theirs] = [GRANTED, GRANTED];
  for (let at = Math.max(0, from - TALK_REACH); at < Math.min(tokens.length, until + TALK_REACH); at++) {
    if (at >= from && at < until) continue;
    const { kind, word } = tokens[at]!;
    if (kind !== 'word' || word.length < 2) continue;
    all++;
    if (said(word) || said(`${word}s`)) theirs++;
  }
  return theirs / all;
}
