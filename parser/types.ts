/**
 * What the rooms of the parser hand to one another. Offsets are UTF-16 code units into the note as it was said:
 * no room ever rewrites the text, so every reading can point at its words.
 */
import type Fraction from 'fraction.js';

/** `start` inclusive, `end` exclusive, into the original text. */
export interface Span {
  start: number;
  end: number;
}

/** Positions in the token list, `from` inclusive, `until` exclusive. */
export interface TokenRange {
  from: number;
  until: number;
}

export type TokenKind =
  | 'word'
  /** Holds a digit or a vulgar-fraction glyph: `12`, `1-3/8`, `6'-8`, `2x4x8`, `R13` stays a word. */
  | 'number'
  /** One mark: `, . ; : ( ) " ' / - + & @ # * = %` and their typographic kin. */
  | 'mark'
  /** A line end, or a spoken "new line". */
  | 'break';

/** One word, number or mark of the note. */
export interface Token extends Span {
  kind: TokenKind;
  /** Exactly as said: `text.slice(start, end)`. */
  text: string;
  /** Lower case, straight apostrophes, as meant: a repaired word carries the trade's spelling. */
  word: string;
  /** White space stands before it (or it is the first). */
  spaced: boolean;
  /** Why the readers step over it: `filler` ("uh"), `repeat` ("the the"), `takenBack` ("two, no," in "two, no, three"), `spokenMark`. */
  skip?: 'filler' | 'repeat' | 'takenBack' | 'spokenMark';
}

/** A misheard word put right. `heard` is what the dictation wrote, `meant` what the trade says. */
export interface Repair extends Span {
  heard: string;
  meant: string;
  /** What supported it, for "why did it read that?". */
  because: string;
}

/** The note after hearing: same text, its tokens, and what was changed in the understanding of them. */
export interface Heard {
  text: string;
  tokens: Token[];
  repairs: Repair[];
}

export type UnitKind =
  | 'length'
  | 'area'
  | 'volume'
  | 'weight'
  | 'count'
  | 'pack'
  | 'time'
  | 'temperature'
  | 'percent'
  | 'pressure'
  | 'current'
  | 'voltage'
  | 'power'
  | 'gauge'
  | 'angle'
  | 'slope'
  | 'torque'
  | 'speed'
  | 'flow'
  | 'other';

/** How one quantity belongs with its neighbours. Members share `id`; `index` counts from 0. */
export interface Group {
  kind: 'pair' | 'range' | 'plusMinus' | 'eachOf';
  id: number;
  index: number;
  size: number;
}

/** A number with what it counts, exact. */
export interface Quantity extends Span, TokenRange {
  quote: string;
  /** In `unit` as said; feet-and-inches are folded into inches. */
  value: Fraction;
  /** Canonical singular (`in`, `ft`, `sq ft`, `bag`, `each`, `in/ft`, `F`, `gauge`), or null where none was said or implied. */
  unit: string | null;
  unitKind: UnitKind | null;
  /** Said with it, covered by a neighbour ("12 by 24 inches"), or filled in by habit. */
  unitFrom: 'said' | 'shared' | 'implied' | 'none';
  group?: Group;
  /** Trade hedges on a tape reading: strong / heavy / full / light / shy / hair over / hair under. */
  tolerance?: 'over' | 'under';
  bound?: 'about' | 'atMost' | 'atLeast' | 'over' | 'under';
  /** "sixteen on center". */
  onCenter?: boolean;
  /** A drop in "quarter inch per foot", "11.5 sq ft to the box": what one of it is measured against (canonical unit). */
  per?: string;
  /** "six cans, no wait, five": where the taken-back wording started, so that a quote can show both. */
  takenBackFrom?: number;
  /** "Three more boxes": the words say that it adds to what was said before. */
  more?: true;
  /** Tokens that no longer count: the number taken back, and the words that took it back. */
  replaces?: TokenRange[];
  /** What is doubtful about it, as a question to the speaker. */
  doubt?: string;
  /** The rule that read it. */
  rule: string;
}

/** A number that is no quantity; it claims its words first so that no reader mistakes them. */
export interface NotQuantity extends Span, TokenRange {
  kind: 'phone' | 'address' | 'clock' | 'money' | 'code' | 'ordinal' | 'year' | 'date' | 'idiom' | 'label';
  quote: string;
  /** For money: the amount; for a clock time: minutes after midnight as said (no a.m./p.m. guess unless `pm` known). */
  value?: Fraction;
}

export type TimeRelation = 'on' | 'by' | 'before' | 'notBefore' | 'after' | 'during';

/** A day or span of days, or a wait that ends on one. */
export interface TimeMention extends Span, TokenRange {
  quote: string;
  /** `YYYY-MM-DD`, local to the job. */
  date: string;
  /** Last day of a span, else null. */
  to: string | null;
  relation: TimeRelation;
  /** A wait: how long, in hours ("let it cure 24 hours", "overnight"). `date` is then the day on which it ends. */
  hours?: number;
  /** Local time of day where one was said or a wait ends at one, `HH:MM`. */
  clock?: string;
  /** True when it lies behind `saidAt` ("yesterday", "last friday"). */
  past: boolean;
  rule: string;
}

export type TermKind =
  | 'material'
  | 'part'
  | 'fixture'
  | 'tool'
  | 'surface'
  | 'area'
  | 'role'
  | 'defect'
  | 'task'
  | 'finish'
  | 'work';

/** One entry of the trade vocabulary (`parser/trade`). */
export interface Term {
  /** The trade's own word, lower case, singular. */
  name: string;
  kind: TermKind;
  /** Other names, misspellings and (for tasks, defects) inflected forms, lower case. */
  also?: string[];
  /** Usual words that dictation writes instead, each needing a supporting neighbour ("silly cone"). */
  misheard?: string[];
  /** For a material: the units it is bought by, most usual first. */
  soldBy?: string[];
  /** Which trade or counter it belongs to: tile, paint, electrical, plumbing, lumber, drywall, hvac, roofing, concrete, hardware, flooring, doors, general. */
  counter?: string;
  /** For a task: the tools and small parts that it calls for. */
  bring?: string[];
}

/** A vocabulary word found in the note. */
export interface TermMention extends Span, TokenRange {
  term: Term;
  quote: string;
}

/** Everything the ground floor found, before anyone asks what it means together. */
export interface Reading {
  heard: Heard;
  quantities: Quantity[];
  notQuantities: NotQuantity[];
  times: TimeMention[];
  terms: TermMention[];
  /** Non-overlapping, in order, together covering every token that is not punctuation between them. */
  clauses: Clause[];
}

/** A stretch of talk with one thing to say. */
export interface Clause extends Span, TokenRange {
  /** The area in force here ("over in the laundry ... also in here"), as named. */
  area: string | null;
}

/** What every fact carries. */
export interface FactBase extends Span {
  quote: string;
  area: string | null;
  /** 0 to 1: how likely it is that this was told (`isDoubtful`). */
  confidence: number;
  /** The rule that read it: the answer to "why did it read that?". */
  rule: string;
  /** The one question to ask about it, or undefined where nothing is in doubt. */
  ask?: string;
  /** From a timed transcript: the second of the recording at which its words begin, and who said them where known. */
  at?: number;
  speaker?: string;
  /** Of a flaw, a plan or finished work: the words in which it was told, where they tell it better than its name. */
  wording?: string;
}

export interface Measurement extends FactBase {
  kind: 'measurement';
  /** What was measured. */
  of: string;
  value: number;
  /** The exact value as a fraction, `11/8`. */
  exact: string;
  unit: string | null;
  /** How it was found, or how it has to be. */
  role: 'found' | 'wanted';
  bound?: Quantity['bound'];
  tolerance?: Quantity['tolerance'];
}

export type MaterialStatus = 'need' | 'have' | 'used' | 'bought' | 'returned' | 'ordered' | 'mentioned';

export interface Material extends FactBase {
  kind: 'material';
  item: string;
  /** Trade shorthand: `12x24`, `4 in`, `12 AWG`, `3-1/4 in x 12 ft`. */
  size: string | null;
  /** Colour, finish, rating: `light gray`, `primed`. */
  specs: string[];
  quantity: number | null;
  exact: string | null;
  /** Upper end where a range was said ("three or four"); `quantity` is then the larger too. */
  atLeast: number | null;
  unit: string | null;
  status: MaterialStatus;
  /** `more` where it is added to what was said before ("one more"), `total` where it replaces it ("make it three", "altogether"). */
  counts: 'more' | 'total' | 'plain';
}

export interface Problem extends FactBase {
  kind: 'problem';
  thing: string;
  defect: string;
  state: 'open' | 'fixed';
  suspected: boolean;
  /** The defect's own repair, where one was said ("replace"). */
  repair?: string;
}

export interface FollowUp extends FactBase {
  kind: 'followUp';
  /** Verb first. */
  task: string;
  /** Who does it; null for the speaker. */
  who: string | null;
  due: string | null;
  notBefore: string | null;
  /** What it waits for, in words ("thinset, 24 h", "lab results"). */
  waitingFor: string | null;
  /** "if it still drips": kept as said. */
  condition: string | null;
}

export interface Done extends FactBase {
  kind: 'done';
  task: string;
  who: string | null;
}

export interface Decision extends FactBase {
  kind: 'decision';
  what: string;
  /** Work or goods that the decision drops ("forget the shelf"). */
  drops: string | null;
}

export interface Spending extends FactBase {
  kind: 'spending';
  /** In the currency's main unit. */
  amount: number;
  currency: string;
  on: string | null;
}

/** A note that is an instruction to the list ("four is done", "what's left in the kitchen"). */
export interface Command extends FactBase {
  kind: 'command';
  /** `split`: the fact that joined an item last stands on its own; `same`: it is one with the item whose number is in `to`. */
  verb: 'done' | 'undo' | 'drop' | 'move' | 'change' | 'reopen' | 'reschedule' | 'split' | 'same' | 'ask';
  /** Number of the item on the punch list, where one was said. */
  number: number | null;
  /** What it is about, in words. */
  about: string | null;
  to: string | null;
  /** For `ask`: left = open items, order = what to buy, list = read all, ready = what can be worked on, told = all of one thing. */
  question: 'left' | 'order' | 'list' | 'ready' | 'measurements' | 'waiting' | 'told' | null;
}

export type Fact = Measurement | Material | Problem | FollowUp | Done | Decision | Spending | Command;

/** What one note says. */
export interface NoteReading extends Reading {
  facts: Fact[];
}

/** What the parser must be told; it has no clock, no files and no settings of its own. */
export interface ReadOptions {
  /** Local wall time of the note, ISO without zone: `2026-05-12T15:20:00`. */
  saidAt: string;
  /** Areas that the job is known to have. */
  areas?: readonly string[];
  /** Where the speaker stands: the area of whatever the words place nowhere else. */
  area?: string | null;
  vocabulary?: Vocabulary;
  /** Asked about words that neither the vocabulary nor the table of verbs holds. */
  wordClass?: WordClassOf;
}

/** What a word is in its sentence, as a general tagger sees it. */
export type WordClass = { class: 'noun' } | { class: 'verb'; lemma: string; form: 'base' | 's' | 'past' | 'ing' };

/** Words in lower case; `before` and `after` are the neighbours, empty at the edge of the talk. Null: neither, or unknown. */
export type WordClassOf = (word: string, before: string, after: string) => WordClass | null;

/** Built once from terms, then shared (`parser/trade/vocabulary.ts`). */
export interface Vocabulary {
  terms: readonly Term[];
  /** Longest mention that starts at `index` among the words, or null. */
  match(tokens: readonly Token[], index: number): { term: Term; until: number } | null;
  has(word: string): boolean;
}
