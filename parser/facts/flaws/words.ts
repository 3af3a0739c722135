import type { Chunk } from '../chunks.ts';

/**
 * How things go wrong, in everyday words that no trade list holds: the vocabulary has the trade's own. All forms are
 * found by stem, so that "binds", "bound" and "binding" need one entry.
 */
const set = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/));

/** What a thing does that it should not. Said of a thing; a person who slips or drops something does no such thing. */
const MALFUNCTIONS = set(
  `bind scrape creak click pop short arc spark dim stall surge knock gurgle burp overflow flood pool pond puddle seep sweat bleed
  smear smudge bubble blister crack split warp bow twist sag dip bounce flex wobble tilt lean tip slip gape telegraph jam
  skip slam fail quit burst rupture snap shear heave sink erode rot rust corrode mold mildew stink smell reek fault lag leach spall
  crumble flake peel fade curl buckle swell shrink separate delaminate rattle hum buzz squeak squeal whistle vibrate shake flicker
  trip leak drip weep clog catch drag rub stick freeze overheat chatter cycle backdraft siphon drift droop splinter fray unravel`,
);

/** How a thing is when it is not well; said behind "is", "looks", "feels", or bare behind its name. */
const AILMENTS = set(
  `bad crooked loose soft uneven rough dull dirty gummed gunked jammed noisy slow weak cloudy foggy tacky blotchy patchy spotty
  streaky stiff sticky bouncy springy spongy squishy hollow drafty damp musty moldy nasty sketchy illegal unsafe backwards backward
  mismatched misaligned undersized oversized incomplete mangled faulty defective janky iffy funky wonky unlevel lopsided askew
  lumpy bumpy wavy choppy brittle crumbly flimsy rickety shaky leaky creaky squeaky rusty greasy grimy scummy stained scratched
  chipped dented gouged busted shot toast junk garbage trash ruined wrecked trashed torn frayed kinked pinched crushed clogged
  plugged blocked frozen seized stuck stripped rounded worn gone-bad rotten rotted split warped bowed cupped twisted swollen
  wrinkled blank smashed pitted crazed matted sagging leaning sinking missing dead fried burnt scorched melted cracked broken bent`,
);

const stems = (word: string): string[] => {
  const bare = word.replace(/n't$/, '');
  const out = [bare];
  for (const end of ['s', 'es', 'ed', 'ing', 'd']) if (bare.endsWith(end)) out.push(bare.slice(0, -end.length));
  if (bare.endsWith('ied') || bare.endsWith('ies')) out.push(`${bare.slice(0, -3)}y`);
  if (bare.endsWith('ing') || bare.endsWith('ed')) {
    const stem = bare.replace(/(?:ing|ed)$/, '');
    out.push(`${stem}e`);
    if (/(.)\1$/.test(stem)) out.push(stem.slice(0, -1));
  }
  return out;
};

const PAST_OF: ReadonlyMap<string, string> = new Map(
  Object.entries({
    bound: 'bind',
    bled: 'bleed',
    stank: 'stink',
    sank: 'sink',
    sunk: 'sink',
    shook: 'shake',
    froze: 'freeze',
    stuck: 'stick',
    swelled: 'swell',
    shrunk: 'shrink',
    shrank: 'shrink',
    caught: 'catch',
    wept: 'weep',
  }),
);

/** The malfunction that a word tells of, or null. */
export const malfunctionOf = (chunk: Chunk | undefined): string | null =>
  chunk?.kind === 'word' || chunk?.kind === 'term'
    ? (PAST_OF.get(chunk.word) ?? stems(chunk.word).find((s) => MALFUNCTIONS.has(s)) ?? null)
    : null;

export const ails = (chunk: Chunk | undefined) => chunk !== undefined && AILMENTS.has(chunk.word);
