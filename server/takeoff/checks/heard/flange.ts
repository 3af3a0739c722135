import Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import { closetBolts } from '../closetBolt.ts';
import { flangeHeight, thickRing } from '../flange.ts';
import type { Verdict } from '../verdict.ts';
import { matched, type Reader } from './reader.ts';

const FINISHED = '(?:the )?(?:finished |finish |new )?(?:floor|tile|flooring)';
const BELOW = saying(`<LN> (?:below|under|lower than|low of|down from|shy of) ${FINISHED}`);
const ABOVE = saying(`<LN> (?:above|over|proud of|higher than|high of|up from|off) ${FINISHED}`);
const ON_SUBFLOOR = saying('<LN> (?:above|over|proud of|off) (?:the )?(?:bare )?subfloor');

/** "Stands 5/8 proud of it", said of a floor that is down. */
const BELOW_IT = saying('<LN> (?:below|under|lower than|shy of) (?:it|that)\\b');
const ABOVE_IT = saying('<LN> (?:above|over|proud of|higher than) (?:it|that)\\b');
const FLOOR_IS_DOWN =
  /\b(?:tile|floor|flooring)(?:'s| is| are)? (?:all )?(?:down|in|set|laid|finished|done)\b|\bfinish(?:ed)? floor\b/;

/** Closet flange against the floor: as it sits on the finished floor, else from the layers laid over the subfloor. */
export const flanges: Reader = (said, before) => {
  if (!/\bflange\b/.test(said.words)) return [];
  const notes = [...before, said];
  const sat = flangeBelow(said, notes);
  const bolts = boltsIn(said, sat?.below ?? null);
  if (sat === null) return bolts;
  const verdict = flangeHeight(sat.below, sat.working);
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

/** Closet bolts against flange and bowl: where their length is told, with the bowl's foot or a question. */
function boltsIn(said: Said, below: Fraction | null): Verdict[] {
  if (!/\bbolts?\b/.test(said.words)) return [];
  const [length, foot] = [matched(said, BOLT_LENGTH), matched(said, FOOT)];
  const asked = /\b(?:long enough|too short|short|reach)\b|\?/.test(said.words);
  if (!length || !(foot || asked) || length.compare(1) < 0 || length.compare(8) > 0) return [];
  return [closetBolts({ length, below, foot })];
}

function flangeBelow(said: Said, notes: readonly Said[]): { below: Fraction | null; working?: string } | null {
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
  const build = notes.find((n) => /\b(?:build ?up|built up|floor build)\b/.test(n.words));
  if (!sits || !build) return null;
  const layers = build.figures.filter((f) => f.unit === 'in').map((f) => f.value);
  if (!layers.length) return { below: null };
  const floor = layers.reduce((sum, layer) => sum.add(layer), new Fraction(0));
  const working = `${layers.map((l) => l.toFraction(true)).join(' + ')} = ${floor.toFraction(true)} in of floor over the subfloor, flange ${sits.toFraction(true)} in above it`;
  return { below: floor.sub(sits), working };
}
