import type { Line } from '../line.ts';
import { unitAt } from '../unitAt.ts';
import { unitNamed } from '../units.ts';
import { IN_WORDS, isBy, ONES, PARTS, TENS } from '../words.ts';
import { type ClaimRule, isDigits } from './claim.ts';

/** Set phrases with a number in them. Common practice, no source. */
const PHRASES =
  `size of a quarter, thickness of a quarter, width of a quarter, thick as a quarter, big as a quarter, one in the same, one and the same, two doors down, three doors down, one of those, one of these, fifty fifty, 50 50, 50 / 50, half and half, two seconds, two secs, two minutes of, five
minutes ago, ten minutes ago, one of them, a million, one in a million, a thousand times, a thousand and one, a
hundred times, a ton of, a hundred percent, one hundred percent, 100 percent sure, 100 %, a hundred and ten percent,
whole nine yards, square one, a minute, a second, a sec, one second, one sec, one minute, one more time, one more
thing, one of a kind, one go, two hundreds, one last time, one thing, on the one, back to one, a couple times, a
couple of times, one day, one time, at one point, at one time, nine to five, twenty four seven, twenty-four seven,
two cents, one way or, all in one, in one ear, in one piece, on one hand, one hand, one man, half assed, half way,
half bad, half decent, half hearted, half bath, half baths, half wall, half round, half door, half moon, half lap,
half hinge, quarter round, quarter points, quarter turn, quarter turns, quarter sawn, quarter bend, a quarter turn, first quarter,
number one, six pack, six ways, six of one, six of one and half a dozen of the other, six of one half a dozen of the
other, half a dozen of the other, one or the other, the two of us, the two of them, the three of us, the three of
them, one horse town, zero tolerance, three times the charm, five will get you ten, one less thing, the big three,
back in ten, back in five, back in twenty, there in ten, there in five, there in twenty, here in ten, one guy,
hundred percent, a million times, ten to one, three ring circus, two birds, two birds one stone, a dozen times, one
hell, one heck, one at a time, one by one, two at a time, second to none, cloud nine, ten four, 10 - 4, two faced,
a one eighty, a complete one eighty, ten out of ten, nine times out of ten, five star, a day off, what a day, what a week, a day late, a day
or two ago, third party, catch twenty two, nine one one, call 911, call 811, call eight one one, dial 911, plan b,
forty something, thirty something, fifty something, twenty something, sixty something, the big one, one story short,
two left feet, two thumbs, four letter, eleventh hour, zero chance, zero idea, zero clearance, one another, owes me
one, owe me one, owe you one, owes you one, owe him one, owe them one, owes us one, owe her one, i for one, for one
thing, take five, take ten, high five, one foot out the door, one foot in the door, one foot in the grave, two
wrongs, no two ways, two ways about it, two way street, two sides to every, two peas, two shakes, two and two
together, it takes two to, three strikes, three's a crowd, three guesses, on all fours, six feet under, nine lives, top
ten, top five, top three, hundred and one things, thousand and one, hundred and ten percent, a thousand words,
million dollar, one too many, one and done, one fell swoop, one step at a time, one size fits all, one track, one on
one, one to one, one foot in front of the other, in one breath, one fine day,
one big happy, one bite at a time, one for the road, one for the books, one for one, ninety percent of the time,
ninety nine percent of the time, nine tenths of the law, eighty twenty, 90 percent of the time, 99 percent of the
time, 99 times out of a hundred, forty winks, eighteen wheeler, eighteen wheelers, four wheel drive, ten gallon hat,
sixth sense, one oh one, day one, one word, one question, in one shot, in one swing, in one swoop, ninety to
nothing, nine yard line, behind the eight ball, eight ball, one eyed, one horse, one trick, two timing, two tone, a
hundred to one, one chance in, one in ten, one last thing, one final thing, one quick thing, one small thing, one
other thing, one good thing, one bad thing, all for one, one for all, at sixes and sevens, seven days a week, twenty
four hours a day, 365 days a year, 24 / 7, 24 hours a day, 7 days a week, two three times, two or three times, three
or four times, a few dozen times, one thousand percent, a thousand percent, a million bucks, like a million, weighs a ton, split in two, cut in two, in two halves, snapped in two, broke in two, two ticks, three ticks, two secs, two mins, five mins ago, two shakes of,
in two minds, of two minds, six and two threes, strike one, strike two, strike three, strike four, game one, round one, round two,
one way traffic, one way system, one way street, one - off, most of a, rest of a, better part of a, most of one, the once over,
one of them's, one of these days, one fine morning, one of my, one and only, one or two things, two left hands, two can play,
nine to the dozen, nineteen to the dozen, baker's dozen of, first past, two sheets to the wind, three sheets to the wind,
two bob, two pennies, a penny, penny pinching, ten a penny, two a penny, in one sitting, back at square one, six sheets to the wind,
nine times in ten, one in three, dime a dozen, a dime a dozen, one step ahead, one step forward, two steps back, two steps forward,
if it's an inch, if he's a day, if it's a day, one minute it, one minute he, one minute they, two's company, three times lucky, third time lucky, fifth wheel, third wheel,
level one, level two, level three, grade one, grade two, two fingers, ten fingers, two bits, four corners of,
no one, every one, stitch in time saves nine, two heads are better than one, hindsight's twenty twenty, hindsight is twenty twenty,
hindsight is 20 / 20, twenty twenty hindsight, ten foot pole, ten foot barge pole, give him an inch, give them an inch, give her an inch,
an inch and he'll, an inch and they'll, an inch and he, an inch and they, two bricks short, one brick short, few bricks short, two cans short,
one sandwich short, takes two to tango, six of one half dozen of the other, zero to sixty, nought to sixty, zero to a hundred, two sides to that,
two sides to every, two sides to this, one of youse, worth two in the bush, one man's, one bad apple, one hit wonder, one man band, seven year itch,
seventh heaven, dressed to the nines, one armed, one legged, two stools, five o'clock shadow, twelve o'clock high, one two punch, two thumbs up,
one percenter, eighty six it, eighty six that, sixty four thousand dollar, hand's worth two, hand is worth two, sweet sixteen, two short of a dozen, ten out of ten, 10 out of 10, final four, big ten, fifty yard line, two minute warning, two minute drill, three stooges, seven seas, seven dwarfs, two shakes,
ten commandments, four letter words, a thousand apologies, one trick pony, two peas in a pod, three blind mice, two cooks, five second rule,
fifteen minutes of fame, quarter bubble, half bubble, half a bubble, a quarter bubble, six of the best, catch 22, seven degrees of separation, six degrees of separation, a hundred miles an hour, hundred miles an hour, a mile a minute, mile a minute, ten pound pom, job one, priority one, priority number one, two for one, three for two, eleven out of ten, hundred on that, hundred on this,
a hundred on that, one hundred on that, one hundred on it, a hundred on it, one jot, one iota, one hell of, one heck of, a month of sundays,
fifty ways, a thousand cuts, two minute noodles, one eye on, one eye open, one track mind, two hands full, two jobs ago, nobody's one hundred,
world war two, world war one, the two thousands, one after another, seven come eleven, zero interest, zero help, zero respect, zero luck, zero patience,
zero excuse, zero excuses, zero clue, zero sense, zero effort, zero sympathy, zero fun, zero warning, zero notice, seven ways from sunday, seven ways to sunday, six ways to sunday, six ways from sunday, one careful owner, two tier, one stop shop, one horse race, two horse race`.split(
    /,\s/,
  );

/** A small number's word, also where it was typed as a figure: "strike 2". */
const saidAs = (line: Line, k: number) =>
  (isDigits(line, k) && line.number(k)?.until === k + 1 ? IN_WORDS.get(line.word(k)) : undefined) ?? line.word(k);

/** Where the phrase's words end, the hyphens that join them stepped over; 0 where it is not there. */
function endOf(line: Line, i: number, phrase: readonly string[]): number {
  let k = i;
  for (const word of phrase) {
    if (k > i && word !== '-' && line.word(k) === '-' && line.tight(k) && line.tight(k + 1)) k++;
    if (saidAs(line, k) !== word && line.word(k) !== word) return 0;
    k++;
  }
  return k;
}

const BY_FIRST = new Map<string, string[][]>();
for (const phrase of PHRASES) {
  const words = phrase.split(/\s/);
  BY_FIRST.set(
    words[0]!,
    [...(BY_FIRST.get(words[0]!) ?? []), words].sort((a, b) => b.length - a.length),
  );
}

/** "Ten four and a half": a number that goes on. */
const hasPart = (line: Line, until: number) =>
  line.number(until - 1) !== null &&
  (PARTS.has(line.word(until)) || (line.word(until) === 'and' && [1, 2].some((k) => PARTS.has(line.word(until + k)))));

/** "Sixty one and a half wall to wall", "twenty gallons a minute": what stands before it has the words. */
function isPartOfMore(line: Line, i: number, first: string): boolean {
  // "Thirty one off the cooktop".
  if (ONES.has(first) && TENS.has(line.word(i - 1))) return true;
  if (first === 'a' && /^(?:half|quarter|third)$/.test(line.word(i - 1))) return true;
  if (first === 'a' && unitNamed(line.word(i - 1))?.kind === 'volume') return true;
  if (first !== 'half' && first !== 'quarter') return false;
  const and = line.word(i - 1) === 'a' ? i - 2 : i - 1;
  const whole = line.word(and - 1);
  return line.word(and) === 'and' && (ONES.has(whole) || TENS.has(whole) || line.tokens[and - 1]?.kind === 'number');
}

export const idiom: ClaimRule = (line, i) => {
  const phrases = BY_FIRST.get(saidAs(line, i)) ?? BY_FIRST.get(line.word(i));
  if (!phrases) return null;
  for (const words of phrases) {
    const until = endOf(line, i, words);
    if (until > 0) return holdsNumber(line, i, words, until) ? null : { until, kind: 'idiom' };
  }
  return null;
};

/** A number that goes on, or has a unit of its own: "one by one inch" is a size. */
function holdsNumber(line: Line, i: number, words: readonly string[], until: number): boolean {
  if (isPartOfMore(line, i, words[0]!) || hasPart(line, until)) return true;
  // "Take five off": so much is cut.
  if (words[0] === 'take' && /^(?:off|out|away)$/.test(line.word(until))) return true;
  const last = line.number(until - 1);
  // "Ten 4x8 sheets".
  if (last?.until === until && isBy(line.word(until))) return true;
  return last?.until === until && !last.article && unitAt(line, until, last) !== null;
}
