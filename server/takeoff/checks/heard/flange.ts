import Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import { closetBolts } from '../closetBolt.ts';
import { flangeHeight, thickRing } from '../flange.ts';
import { dependsOn, type Verdict } from '../verdict.ts';
import { allMatched, matched, type Reader } from './reader.ts';

const FINISHED = '(?:the )?(?:finished |finish |new )?(?:floor|tile|flooring)';
const BELOW = saying(`<LN> (?:below|under|lower than|low of|down from|shy of) ${FINISHED}`);
const ABOVE = saying(`<LN> (?:above|over|proud of|higher than|high of|up from|off) ${FINISHED}`);
const ON_SUBFLOOR = saying(
  '<LN> (?:above|over|proud of|off|up from) (?:the )?(?:bare |old )?(?:sub ?floor|slab|concrete)',
);

/** "Stands 5/8 proud of it", said of a floor that is down. */
const BELOW_IT = saying('<LN> (?:below|under|lower than|shy of) (?:it|that)\\b');
const ABOVE_IT = saying('<LN> (?:above|over|proud of|higher than) (?:it|that)\\b');
const FLOOR_IS_DOWN =
  /\b(?:tile|floor|flooring)(?:'s| is| are)? (?:all )?(?:down|in|set|laid|finished|done)\b|\bfinish(?:ed)? floor\b/;

/** Closet flange against the floor: as it sits on the finished floor, else from the layers laid over the subfloor. */
export const flanges: Reader = (said, before) => {
  if (!/\bflange\b/.test(said.words)) return CLOSET_BOLTS.test(said.words) ? boltsIn(said, null) : [];
  const notes = [...before, said];
  const sat = flangeBelow(said, notes);
  const bolts = boltsIn(said, sat?.below ?? null);
  if (sat === null) return bolts;
  const height = flangeHeight(sat.below, sat.working);
  const verdict = sat.unsaid && height.result === 'fits' ? dependsOn(height, sat.unsaid) : height;
  return [
    /\b(?:extra[- ]?(?:thick|tall)|jumbo|thick ring|extended ring)\b/.test(said.words) ? thickRing(verdict) : verdict,
    ...bolts,
  ];
};

const BOLTS =
  "\\b(?:closet|toilet|johnny|flange)? ?bolts?(?:'re|'s)?(?: (?:i|we|they|he|she|got|have|bought|brought|that|came|with|are|is|only|just|in|the|kit|about|long|were|measure))* ";
const BOLT_LENGTH = saying(`${BOLTS}<LN>|<LN>(?: (?:inch|long))* (?:closet|toilet|johnny|flange) bolts?\\b`);
const FOOT = saying(
  "\\b(?:foot|ear|base|flange of the bowl)(?: (?:of the |on the )?(?:bowl|toilet))?(?:'s| is| measures| comes to| runs)* <LN>|<LN>(?: thick)? (?:foot|ear|base) on the (?:bowl|toilet)\\b",
);

const CLOSET_BOLTS = /\b(?:closet|toilet|johnny) bolts?\b/;

/** Closet bolts against flange and bowl: where their length is told, with the bowl's foot or a question. */
function boltsIn(said: Said, below: Fraction | null): Verdict[] {
  if (!/\bbolts?\b/.test(said.words)) return [];
  const [length, foot] = [matched(said, BOLT_LENGTH), matched(said, FOOT)];
  const asked = /\b(?:long enough|too short|short|reach)\b|\?/.test(said.words);
  if (!length || !(foot || asked) || length.compare(1) < 0 || length.compare(8) > 0) return [];
  return [closetBolts({ length, below, foot })];
}

interface Sits {
  /** Inches under the finished floor; null where it cannot be reckoned. */
  below: Fraction | null;
  working?: string;
  /** What would move it further down and was not said. */
  unsaid?: string;
}

const OLD_FLOOR = /\b(?:flush|level|even) with (?:the )?(?:old|existing|original) (?:floor|flooring|tile|vinyl)\b/;

/** "Flush with the old floor, adding quarter inch board and three eighths tile": the new layers bury it. */
function underNewLayers(said: Said): Sits | null {
  if (!OLD_FLOOR.test(said.words) || !/\b(?:adding|add|new|going (?:on|over|down)|over it|on top)\b/.test(said.words))
    return null;
  const layers = said.figures.filter((f) => f.unit === 'in' && f.value.compare(2) <= 0).map((f) => f.value);
  if (!layers.length) return { below: null };
  const below = layers.reduce((sum, layer) => sum.add(layer), new Fraction(0));
  const bed = /\btile\b/.test(said.words) && !/\b(?:mortar|thin ?set|bed)\b/.test(said.words);
  return {
    below,
    working: `${layers.map((l) => l.toFraction(true)).join(' + ')} = ${below.toFraction(true)} in laid over the old floor`,
    ...(bed && { unsaid: 'how thick the mortar under the tile is' }),
  };
}

const LAYER = saying(
  '<LN>(?: inch(?:es)?)?(?: of)?(?: [a-z]+)? (?:tile|thin ?set|mortar|plank|backer(?: board)?|cement board|ply(?:wood)?|underlayment|vinyl|board)\\b',
  'g',
);

/** "What we're laying on it is 5/16 tile and 3/16 of thinset": layers that a note of the flange tells. */
function laidOver(said: Said): Fraction[] | null {
  if (!/\b(?:laying|going (?:on|over|down)|goes (?:on|over|down)|adding|putting)\b/.test(said.words)) return null;
  const layers = allMatched(said, LAYER).filter((l) => l.compare(2) <= 0);
  return layers.length > 0 ? layers : null;
}

function flangeBelow(said: Said, notes: readonly Said[]): Sits | null {
  const buried = underNewLayers(said);
  if (buried) return buried;
  const ofIt = FLOOR_IS_DOWN.test(said.words) && !/\bsub ?floor\b/.test(said.words);
  const below = matched(said, BELOW) ?? (ofIt ? matched(said, BELOW_IT) : null);
  if (below) return { below };
  const above = matched(said, ABOVE) ?? (ofIt ? matched(said, ABOVE_IT) : null);
  if (above) return { below: above.neg() };
  if (/\b(?:flush|level|even) with (?:the )?(?:finished floor|finish floor|tile|new floor)\b/.test(said.words))
    return { below: new Fraction(0) };
  const sits = notes
    .map((n) =>
      /\b(?:flush|level|even) with (?:the )?(?:bare )?subfloor\b/.test(n.words)
        ? new Fraction(0)
        : matched(n, ON_SUBFLOOR),
    )
    .find((v) => v !== null);
  const layer = sits ? laidOver(said) : null;
  if (sits && layer) {
    const over = layer.reduce((sum, l) => sum.add(l), new Fraction(0));
    const bed = /\btile\b/.test(said.words) && !/\b(?:mortar|thin ?set|bed)\b/.test(said.words);
    const working = `${layer.map((l) => l.toFraction(true)).join(' + ')} = ${over.toFraction(true)} in laid, flange ${sits.toFraction(true)} in above what it lies on`;
    return { below: over.sub(sits), working, ...(bed && { unsaid: 'how thick the mortar under the tile is' }) };
  }
  const build = notes.find((n) => /\b(?:build ?up|built up|floor build)\b/.test(n.words));
  if (!sits || !build) return null;
  const layers = build.figures.filter((f) => f.unit === 'in').map((f) => f.value);
  if (!layers.length) return { below: null };
  const floor = layers.reduce((sum, layer) => sum.add(layer), new Fraction(0));
  const working = `${layers.map((l) => l.toFraction(true)).join(' + ')} = ${floor.toFraction(true)} in of floor over the subfloor, flange ${sits.toFraction(true)} in above it`;
  return { below: floor.sub(sits), working };
}
