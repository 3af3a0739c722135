import { wordsOf } from '../../../parser/trade/likeness.ts';
import type { Fact, Material } from '../../../parser/types.ts';
import { NUMBER, numberOf } from '../said/numbers.ts';
import { isPackWord } from './kinds.ts';

/** Goods whose count or name stands beside the words that were read for them. */
export function goodsAsSaid(fact: Material, text: string, facts: readonly Fact[]): Material | null {
  if (isSizeOf(fact, facts) || isHowSold(fact) || isRate(fact, text) || isCoverage(fact, text) || isPiece(fact, text))
    return { ...fact, status: 'mentioned' };
  if (facts.some((f) => f.kind === 'material' && f.quantity !== null && !namesItself(f) && isNamedBy(f, fact, text)))
    return { ...fact, status: 'mentioned' };
  if (
    fact.unit &&
    fact.unit !== 'each' &&
    !isPackWord(fact.unit) &&
    fact.quote.endsWith(fact.unit) &&
    !/\bof\b/.test(fact.quote) &&
    !/^(?:ft|in|sq ft|lb|gal|qt|pt|yd|cu yd|oz|m|mm|cm|l|kg)$/.test(fact.unit)
  )
    return { ...fact, item: fact.unit, unit: 'each' };
  if (
    /\bfooters?$/.test(fact.quote) &&
    (fact.unit === 'ft' || (fact.quantity === null && / ft$/.test(fact.size ?? '')))
  ) {
    // "Seven footers, twelve of them".
    const count = numberOf(OF_THEM.exec(text.slice(fact.end))?.[1] ?? '');
    return {
      ...fact,
      size: fact.unit === 'ft' ? `${fact.quantity} ft` : fact.size,
      quantity: count,
      exact: count === null ? null : String(count),
      unit: count === null ? null : 'each',
      // A length of boards uses none of them up.
      status: fact.status === 'used' ? 'mentioned' : fact.status,
    };
  }
  if (fact.unit === 'ft' && /\bof (?:them|those|these|em|'em)$/.test(fact.quote)) return { ...fact, unit: 'each' };
  if (onlySpokenOf(fact, text, facts) || isToldOfMore(fact, text, facts) || isReasonFor(fact, text, facts))
    return { ...fact, status: 'mentioned' };
  if (fact.status === 'used' && wantedFor(fact, text, facts)) return { ...fact, status: 'need' };
  // "Thirty two sheets worth": so much work, not so much stock.
  if (fact.status === 'have' && /^'?s? worth\b/.test(text.slice(fact.end))) return { ...fact, status: 'need' };
  const said = text.toLowerCase();
  const before = said.slice(Math.max(0, fact.start - 40), fact.start);
  const after = said.slice(fact.end, fact.end + 60);
  if (/\b(?:instead of|rather than|not) (?:the |a |an )?$/.test(before)) return { ...fact, status: 'mentioned' };
  const next = fact.quantity === null || namesItself(fact) ? undefined : facts.find((f) => isNamedBy(fact, f, text));
  const named = next?.kind === 'material' ? next.item : renamed(fact, after);
  const item = (named ?? fact.item).replace(/ (?:instead|too|also|though|anyway|either)$/, '');
  const count = fact.quantity === null ? countBeside(fact, before, after, said) : null;
  if (item === fact.item && !count) return null;
  return {
    ...fact,
    item,
    ...(count && { quantity: count.count, exact: String(count.count), unit: count.unit ?? fact.unit ?? 'each' }),
  };
}

const OF_THEM = new RegExp(`^,? (${NUMBER}) of (?:them|those|these|em|'em)\\b`, 'i');

/** "One bottom seal, sixteen foot": a length told right behind counted goods is theirs. */
const isSizeOf = (fact: Material, facts: readonly Fact[]): boolean =>
  /^(?:ft|in)$/.test(fact.unit ?? '') &&
  facts.some(
    (f) =>
      f.kind === 'material' &&
      f !== fact &&
      f.item === fact.item &&
      f.status === fact.status &&
      f.unit === 'each' &&
      f.end <= fact.start &&
      fact.start - f.end < 30,
  );

/** "Sixty pound bags", "10 ft sticks": a pack in the plural without a count tells how something is sold, and is not one. */
const isHowSold = (fact: Material): boolean =>
  /\bpounders$/i.test(fact.quote) ||
  // Tile comes in no bags: it is what goes on with it.
  (/\btile$/.test(fact.item) && / lb$/.test(fact.size ?? '')) ||
  isPackInPlural(fact);

const isPackInPlural = (fact: Material): boolean =>
  fact.quantity === 1 &&
  / (?:lb|kg|ft|m|oz|gal|L|cu ft)$/.test(fact.size ?? '') &&
  /\b(?:bags|sacks|sticks|lengths|boxes|buckets|pails|tubes|rolls|coils|cans|tins|tubs)(?: [\d./]+ cu ft| of [a-z ]+)?$/i.test(
    fact.quote,
  ) &&
  (!namesItself(fact) || (fact.status !== 'need' && / of /.test(fact.quote)));

/** "Ten square foot a crate": what a pack covers. */
const isCoverage = (fact: Material, text: string): boolean =>
  /^(?:an?|per) /i.test(fact.quote) &&
  fact.quantity === 1 &&
  isPackWord(fact.unit ?? '') &&
  /(?:square|sq\.?|sq) ?(?:feet|foot|ft|met(?:er|re)s?|m|yards?)\s*$|\bsf\s*$/i.test(text.slice(0, fact.start));

/** "Three bundles make a square", "40 bags to the thousand": how far goods go. */
const isRate = (fact: Material, text: string): boolean =>
  fact.unit !== null &&
  /(?:^|[a-z] )(?:make|makes|to|per|for|cover|covers|do|does|go|goes) (?:an?|the|each|every|one) (?:square|sq|hundred|thousand|cube|cubic|metre|meter|bay|hole|room|wall)\b/i.test(
    `${fact.quote}${text.slice(fact.end, fact.end + 30)}`.slice(fact.quote.search(/\s/) + 1, fact.quote.length + 30),
  );

/** "3 @ 1400": a bare count and a length behind it are pieces of a cut list, whatever was named before. */
const isPiece = (fact: Material, text: string): boolean =>
  /^\d+$/.test(fact.quote) && /^ ?@ ?\d/.test(text.slice(fact.end));

/** Read as wanted, where the words tell of something else. */
function onlySpokenOf(fact: Material, text: string, facts: readonly Fact[]): boolean {
  if (fact.status !== 'need') return false;
  // "Does a 3 inch pvc fit inside a 4 inch pvc": asked about, not asked for.
  if (ASKS_FIT.test(sentenceOf(text, fact))) return true;
  if (isInSum(fact, text)) return true;
  // "R-13 batts": how well they insulate, not how many.
  if (/\br[- ]?$/i.test(text.slice(0, fact.start)) && /^\d+\b/.test(fact.quote)) return true;
  // Sizes and ratings are no way to buy.
  if (/^(?:cu in|sq in|psi|kPa|bar|A|V|W|%|F|C|deg|min|hr|day|week)$/.test(fact.unit ?? '')) return true;
  const within = facts.filter((f) => f !== fact && f.start <= fact.start && fact.end <= f.end);
  // "New flex is in": what was put in place is wanted no more.
  if (within.some((f) => f.kind === 'done' && !WANTS.test(f.quote.toLowerCase()))) return true;
  // "It was just jammed, a bottle cap": what was the matter.
  if (within.some((f) => f.kind === 'problem' && f.state === 'fixed') && !WANTS.test(sentenceOf(text, fact)))
    return true;
  // "That needs a patch" is work.
  return fact.unit === 'each' && WORK_NOUN.test(fact.item) && within.some((f) => f.kind === 'followUp');
}

/** "A box of tile short, so one more box of tile": the same lack, told again as how many more to get. */
const isToldOfMore = (fact: Material, text: string, facts: readonly Fact[]): boolean =>
  fact.status === 'need' &&
  fact.counts !== 'more' &&
  fact.quantity !== null &&
  (/^[^.,;!?\n]{0,16}\bshort\b/i.test(text.slice(fact.end)) ||
    /\bshort(?: by| of)?(?: about)? $/i.test(text.slice(0, fact.start))) &&
  facts.some(
    (f) =>
      f.kind === 'material' &&
      f.status === 'need' &&
      f.counts === 'more' &&
      f.item === fact.item &&
      f.quantity === fact.quantity &&
      f.start > fact.start,
  );

/** "I only need five, not six, there's one left over": why so few are needed, and counted in that already. */
const isReasonFor = (fact: Material, text: string, facts: readonly Fact[]): boolean =>
  fact.status === 'have' &&
  ONLY_NEED.test(sentenceOf(text, fact)) &&
  facts.some(
    (f) =>
      f.kind === 'material' &&
      f.status === 'need' &&
      f.quantity !== null &&
      f.item === fact.item &&
      sentenceOf(text, f) === sentenceOf(text, fact),
  );
const ONLY_NEED = new RegExp(
  `\\b(?:only|just) (?:need|want|get|order|buy|going to need|gonna need)\\b|\\b(?:need|get|order|buy|make (?:it|that)) (?:only|just)\\b|\\b(?:not|instead of|rather than) (?:${NUMBER})\\b`,
);

const SUM =
  /\b[a-z\d/-]+(?: hundred)?(?: plus [a-z\d/-]+(?: hundred)?)+(?: (?:inch|inches|in|foot|feet|ft|meters?|metres?))\b/g;

/** "Sixty plus thirty plus thirty inches": lengths added up, and no counts. */
const isInSum = ({ start, quote }: Material, text: string): boolean =>
  [...text.toLowerCase().matchAll(SUM)].some((m) => start >= m.index - quote.length && start < m.index + m[0].length);

const ASKS_FIT = /^ ?(?:so |and |ok )*(?:does|do|will|would|can|is|are)\b.*\b(?:fits?|go (?:in|through|inside))\b/;
const WORK_NOUN =
  /^(?:(?:new|quick|little) )*(?:patch|coat|cleaning|clean|wipe|adjustment|repair|look|hand|fix|touch[- ]?up|tune[- ]?up)$/;
const WANTS = /\b(?:need|needs|want|wants|get|grab|buy|order|pick up|bring|short|takes?|gets?|list)\b/;
/** What is done with goods that are used; without such a word nothing was. */
const USES =
  /\b(?:used|use|using|took|put|ran|went|goes|laid|set|hung|(?:in|on)(?= (?:the|and|now|here|there|both|all|it|them|place|today|my|her|his)\b|$)|up|down|done|gone|left|through|spread|poured|burned|ate|installed|replaced|swapped|changed|cut|broke|[a-z]+ed)\b/;

/** "Front door sweep is torn, one 36 inch sweep", "hinges are rusted out so two strap hinges": counted for work to come. */
const wantedFor = (fact: Material, text: string, facts: readonly Fact[]): boolean => {
  if (NONE_HERE.test(text.slice(fact.end, fact.end + 40).toLowerCase())) return true;
  const said = sentenceOf(text, fact);
  const from = Math.max(0, fact.start - 90);
  const ahead = facts.some(
    (f) =>
      f.end <= fact.start + 1 &&
      f.start >= from &&
      ((f.kind === 'followUp' && /\b(?:gets?|needs?|wants?|has to|have to|gotta)\b/.test(f.quote.toLowerCase())) ||
        (f.kind === 'problem' && f.state === 'open')),
  );
  const told =
    ahead || /\baltogether\b/.test(said) || ASKED.test(said) || SO.test(text.slice(0, fact.start).toLowerCase());
  return told && !USES.test(ownWords(text, fact));
};
/** "..., we have none", "haven't got any", "need one". */
const NONE_HERE =
  /^[^.;!?\n]{0,14}\b(?:(?:have|got|there's|there is) none|(?:haven't|havent|don't|dont) (?:got |have )?any|need (?:one|two|them|it|\d+)|none left)\b/;
/** "It wont hold so one closer". */
const SO = /\bso (?:that'?s |it'?s |i'll (?:need )?)?$/;
const ASKED = /\b(?:ask(?:s|ed)? for|wants|fancies|(?:would|'d) like)\b/;

/** The words of a fact's own clause, lower case: "rusted out so two hinges" tells of two hinges, and not how they rusted. */
function ownWords(text: string, fact: Fact): string {
  const low = text.toLowerCase();
  const before = /(?:(?!\b(?:so|and|but|then|cause|because)\b)[^.,;:!?\n])*$/.exec(low.slice(0, fact.start))![0];
  const after = /^(?:(?!\b(?:so|and|but|then|cause|because|to)\b)[^.,;!?\n])*/.exec(low.slice(fact.end))![0];
  return `${before}${low.slice(fact.start, fact.end)}${after}`;
}

/** The sentence that a fact stands in, lower case. */
export const sentenceOf = (text: string, { start, end }: Pick<Fact, 'start' | 'end'>): string => {
  const from = Math.max(...['. ', '; ', '! ', '? ', '\n'].map((stop) => text.lastIndexOf(stop, start)));
  return text.slice(from + 1, end + /^[^.;!?\n]*/.exec(text.slice(end))![0].length).toLowerCase();
};

const namesItself = ({ item, quote }: Material): boolean => {
  const quoted = wordsOf(quote);
  return [...wordsOf(item)].some((word) => quoted.has(word));
};

/** "One sheet of three quarter t and g plywood": a count without goods, and right behind it goods without a count. */
const isNamedBy = (fact: Material, name: Fact, text: string): boolean =>
  name.kind === 'material' &&
  name.quantity === null &&
  name.status === fact.status &&
  name.start >= fact.end &&
  name.start - fact.end < 16 &&
  !/[.,;\n]/.test(text.slice(fact.end, name.start));

/** "One roll of twelve two": what is named right behind the count is what is counted, whatever was told before. */
function renamed(fact: Material, after: string): string | null {
  const quoted = wordsOf(fact.quote);
  if ([...wordsOf(fact.item)].some((word) => quoted.has(word)) || fact.status === 'used') return null;
  const open = /\bof$/.test(fact.quote.trim());
  const [, name] = /^ (?:of )?(?:the )?([a-z0-9][a-z0-9/-]*(?: [a-z0-9/-]+)?)/.exec(after) ?? [];
  if (!name || (!open && !/\d/.test(name))) return null;
  if (!open && /^(?:and|or|so|but|not|for|per|every|each|to|on|in|at|left|gone|more|too)\b/.test(name)) return null;
  const words = name.split(' ').filter((word) => !/^(?:and|or|so|not|for|to|on|in|but|too)$/.test(word));
  return words.map((word) => numberOf(word) ?? word).join(' ') || null;
}

const FIVE_NOT_THREE = new RegExp(`^ (${NUMBER})(?: [a-z]+)?,? (?:not|instead of|rather than) (?:${NUMBER})\\b`);
const MAKE_THAT = new RegExp(`^[^.;!?\\n]{0,30}[.,;]? (?:no )?(?:make|call) (?:that|it|them) (${NUMBER}) ?([a-z]+)?`);
const ARTICLE_PACK = new RegExp(`\\b(a|an|${NUMBER}) ([a-z]+)s? of (?:the )?$`);

/** "Make the boards five not three", "a tube of roof cement. make that two tubes": the figure is near, not in the name. */
function countBeside(
  fact: Material,
  before: string,
  after: string,
  said: string,
): { count: number; unit: string | null } | null {
  const five = FIVE_NOT_THREE.exec(after);
  if (five) return { count: numberOf(five[1]!)!, unit: fact.unit };
  const made = fact.status === 'need' ? MAKE_THAT.exec(after) : null;
  const unitOf = (word: string | undefined) => {
    const one =
      word?.replace(/(?:es|s)$/, (ending) => (ending === 'es' && !/(?:x|ch|sh)es$/.test(word) ? 'e' : '')) ?? '';
    return isPackWord(one) ? one : null;
  };
  if (made) return { count: numberOf(made[1]!)!, unit: unitOf(made[2]) ?? fact.unit };
  if (
    fact.status === 'need' &&
    /\b(?:a|an|another) (?:[\w/-]+ ){0,3}$/.test(before) &&
    !/\bof (?:[\w/-]+ )*$/.test(before)
  )
    return { count: 1, unit: 'each' };
  const pack = ARTICLE_PACK.exec(before);
  const unit = unitOf(pack?.[2]);
  if (!pack || !unit || !said) return null;
  return { count: /^an?$/.test(pack[1]!) ? 1 : numberOf(pack[1]!)!, unit };
}
