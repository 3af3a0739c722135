import type { Quantity, TimeRelation, Token } from '../types.ts';
import { dayOf } from './days.ts';
import { dayWord } from './typed.ts';

/** What one rule found: the day, and which words say it (positions among the heard words). */
export interface Found {
  /** First word, where it lies before the one asked about. */
  from?: number;
  until: number;
  date: string;
  to?: string;
  relation?: TimeRelation;
  hours?: number;
  /** Local time of day at which a wait ends, `HH:MM`. */
  clock?: string;
  past?: boolean;
  rule: string;
}

/** A rule is asked at each word in turn; null means "not mine". */
export type Rule = (talk: Talk, i: number) => Found | null;

/** How far back a lead reaches: enough for "before the phone guy comes", short enough to stay in the sentence. */
const LEAD_WORDS = 8;

const JOINED_BACK = new Set(['.', '!', '?', ';', '\n']);

/** The words that count (fillers and what was taken back are stepped over), seen from the moment of the note. */
export class Talk {
  readonly tokens: readonly Token[];
  readonly today: string;
  readonly now: string;
  readonly #words: readonly string[];
  readonly #quantities = new Map<number, { quantity: Quantity; until: number }>();

  constructor(tokens: readonly Token[], now: string, quantities: readonly Quantity[]) {
    const places: number[] = [];
    this.tokens = tokens.filter((token, at) => {
      places[at] = (places[at - 1] ?? 0) + (at > 0 && !tokens[at - 1]!.skip ? 1 : 0);
      return !token.skip;
    });
    places.push(this.tokens.length);
    this.#words = this.tokens.map(({ word }) => dayWord(word));
    this.now = now;
    this.today = dayOf(now);
    for (const quantity of quantities)
      this.#quantities.set(places[quantity.from] ?? 0, {
        quantity,
        until: places[quantity.until] ?? this.tokens.length,
      });
  }

  word(i: number): string {
    return this.#words[i] ?? '';
  }

  /** A possessive is the day all the same: "monday's delivery". */
  bare(i: number): string {
    return this.word(i).replace(/'s$/, '');
  }

  says(i: number, words: readonly string[]): boolean {
    return words.every((word, k) => this.word(i + k) === word);
  }

  /** As `says`, the last word a possessive or not: "labor day's the seventh", "last month's invoice". */
  names(i: number, words: readonly string[]): boolean {
    const last = words.length - 1;
    return this.says(i, words) || (this.says(i, words.slice(0, -1)) && this.bare(i + last) === words[last]);
  }

  quantityAt(i: number): { quantity: Quantity; until: number } | undefined {
    return this.#quantities.get(i);
  }

  /** The quantity whose last word stands right before `i`. */
  quantityEndingAt(i: number): { quantity: Quantity; from: number } | undefined {
    for (let from = i - 1; from >= 0 && from > i - 6; from--) {
      const found = this.#quantities.get(from);
      if (found?.until === i) return { quantity: found.quantity, from };
    }
    return undefined;
  }

  /** Up to eight words before `i`, of the same sentence. */
  lead(i: number): string {
    let from = i;
    while (from > 0 && from > i - LEAD_WORDS && !JOINED_BACK.has(this.word(from - 1))) from--;
    return this.join(from, i);
  }

  join(from: number, until: number): string {
    let text = '';
    for (let k = Math.max(0, from); k < until && k < this.tokens.length; k++) text += (text && ' ') + this.word(k);
    return text;
  }

  /** True where something new is said from here on. */
  opens(i: number): boolean {
    const before = this.tokens[i - 1];
    return (
      before === undefined || before.kind === 'break' || (before.kind === 'mark' && /^[,.;:!?]$/.test(before.text))
    );
  }

  /** True where the talk ends here or goes on with a joint or a subject, so that no noun claims the words before. */
  ends(i: number): boolean {
    const next = this.tokens[i];
    if (next === undefined || next.kind === 'break') return true;
    if (next.kind === 'mark') return /^[,.;:!?)&–—-]$/.test(next.text);
    return NEUTRAL.has(next.word.replace(/'(?:s|re|ll|ve|d|m)$/, ''));
  }

  /** Told of what has been: "it was twenty six on monday", "damp since sunday". */
  toldOfPast(i: number): boolean {
    const lead = this.lead(i);
    return PAST.test(lead) && !FUTURE.test(lead);
  }
}

const NEUTRAL = new Set(
  (
    'and or so but then if when because since while at around about before after by for in is was are we i he she they you it the that this will gonna should can says said please latest anyway now or rather instead unless only though too on to from with till until til through thru not no nobody nothing everyone everybody somebody someone ' +
    'anyone as per once both all maybe probably hopefully sharp first between either where who our my his her their your these those there here ' +
    'have has had do does did would could may might must need needs going except again still already also just yet even which next n me us them him earliest works suits weather ' +
    "isn't aren't wasn't ain't won't don't can't doesn't " +
    // Said at the end to whom it is said.
    'eh aye yeah yep ok okay like love mate boss lads pal bud innit hon'
  ).split(' '),
);
const PAST =
  /\b(?:was|were|had|did|came|poured|ordered|paid|picked|said|poured|started|finished|since|went|(?<!the |on |at )left|found|(?<!'s |'ve |has |have )got|told|called|dropped|sat|ran)\b/;
const FUTURE =
  /\b(?:will|gonna|going|to|can|be|should|must|need|needs|he'll|they'll|we'll|i'll|supposed|coming|so|then|not|don't|before|until|till|til|by)\b/;
