import { remembered } from '../../../../parser/remembered.ts';
import { stem } from '../../../../parser/trade/likeness.ts';

/**
 * What ails a thing, and how people say that it ails it no more: "drips" and "bone dry", "sticks" and "swings free",
 * "loose" and "solid". Roots for the one, whole words for the other. That such a word is said of a thing with such a flaw
 * is a sign; what it weighs is learned. Common practice in how people talk, no source.
 */
const AILMENTS: readonly (readonly [roots: string, cures: string])[] = [
  [
    'loose wobbl rock wiggl shak rickety pull came come hanging hang fell fall droop saggy flop sway give bounc spong detach separat off spin',
    'tight solid firm snug steady rigid secure budge move wobble wiggle rock give shake sway swing hold held bite bit grab stay anchor bolt screw lag pin glue toggle block brace lean hung sat stood weight sound fast fix back shim refasten reattach',
  ],
  [
    'leak drip weep seep ooz puddl wet damp moist soak run trickl dribbl spray sweat flood stain',
    'dry bone drip drop leak weep tight seal hold stop quit stay shut bead clean pressure sweat seep sorted towel paper',
  ],
  [
    'stick stuck bind drag rub catch jam scrap tight stiff seiz swell swollen close shut latch open lock fold slid won',
    'swing slide glide close shut latch click open lock free easy smooth butter plane clear roll finger run turn catch clean daylight lube grease rub stick drag bind scrape',
  ],
  [
    'squeak creak squeal groan rattl hum buzz nois noisy whistl chirp bang clunk knock grind grumbl chatter slam loud hiss',
    'quiet silent peep sound hush noise mouse squeak creak rattle hum buzz whistle hear soft still smooth squeal chirp bang dead',
  ],
  [
    'dead dark flicker blink dim power out burned burnt bulb trip short spark buzz live work on',
    'light lit bright shine burn work live on steady glow power hot ring run hold reset test read volt show trip flicker blink energize',
  ],
  [
    'crack broke torn tear hole missing miss chip split gap gone smash shatter snap stripp bent dent gouge bust gash rip punctur chew worn',
    'new patch patched fill filled replace replaced glue glued mend mended weld sew swap whole back epoxy mud taped tape see find know tell never invisible piece fit cut in seal caulk match straight bent',
  ],
  [
    'clog slow block back plug gurgl drain backing stand standing overflow full',
    'drain clear run flow go open snake empty swallow fast gulp suck down whoosh free clean jet rod rodded',
  ],
  [
    'low high level slope slop plumb crook sag lean tilt uneven lipp proud sunk settl heav cupp dip hump off true square out straight',
    'level plumb straight true flush even flat square bubble dead jack raise lift shim grind feather ground sister up',
  ],
  [
    'peel bubbl blister scuff stain flak fade rust dirty mark streak spot mold mildew smudg graffiti grim bare scratch yellow',
    'paint prime coat clean scrub wash gone sand bleach wipe new cover white shine know tell see spotless',
  ],
  [
    'draft cold air blow whistl gap daylight leak breez',
    'seal tight warm weatherstrip foam stuff flame candle draft feel caulk sweep daylight',
  ],
  ['smell stink odor reek stench sewer gas musty', 'gone fresh smell sweet nothing trap clear clean air nose'],
  [
    'rot rotted rotten soft punk mushy spongy decay termite ant bug mouse mice',
    'new solid cut scab replace wood sound hard epoxy treat sealed hole wool block',
  ],
  [
    'heat cold hot warm freez lukewarm cool pressure weak short cycl',
    'hot warm heat blow blowing cold cool strong bled bleed pressure degree toasty run kick fire fired',
  ],
  ['wrong fit short long backward mismatch size doesn', 'right fit swap exchange correct match proper cut trim'],
];

/** A root of a few letters is a word by itself. */
const SHORT = 3;
const rooted = (root: string) => (root.length > SHORT ? `${root}[a-z']*` : `${root}(?:s|es|ed|ing)?`);
const FAMILIES = AILMENTS.map(([roots, cures]) => ({
  roots: new RegExp(`\\b(?:${roots.split(' ').map(rooted).join('|')})\\b`),
  cures: new Set(cures.split(' ').map(stem)),
}));

/** Which ailments words tell of, by their place in the list. */
export const ailmentsOf = remembered((said): readonly number[] =>
  FAMILIES.flatMap(({ roots }, i) => (roots.test(said.toLowerCase()) ? [i] : [])),
);

/** For each ailment the words, by stem, that tell it as gone. */
export const curesAmong = (stems: readonly string[]): readonly (readonly string[])[] =>
  FAMILIES.map(({ cures }) => stems.filter((word) => cures.has(word)));
