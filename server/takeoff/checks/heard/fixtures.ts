import { saying } from '../../reading/said.ts';
import { lavatoryFront, showerFront, showerInside, toiletCenters, toiletFront, toiletSide } from '../clearance.ts';
import { cannotSay, dependsOn } from '../verdict.ts';
import { allMatched, inchesOf, least, matched, type Reader } from './reader.ts';

const TOILET = /\b(?:toilet|bowl|commode|john|wc|water closet|closet flange|flange)\b/;
const SIDE = '(?:vanity|wall|side ?wall|tub|cabinet|shower|partition|stud|drywall|tile)';
/** What never stands behind a toilet. */
const BESIDE = '(?:vanity|side ?wall|tub|cabinet|shower|partition)';
const fromCenter = (side: string) => [
  saying(
    `\\bcent(?:er|re)(?:line)?(?:'s|s)?\\b[^.{]{0,30}<LN>[^.{]{0,10}\\b(?:off|from|to|of|away)\\b[^.{]{0,24}\\b${side}\\b`,
    'g',
  ),
  saying(
    `\\bcent(?:er|re)(?:line)?(?: of (?:the )?[a-z]+)? to (?:the )?(?:finished |left |right )?${side}:?[^.{]{0,14}<LN>`,
    'g',
  ),
  saying(`<LN> (?:to|from|off) (?:the )?(?:finished |side |left |right )?${side}\\b`, 'g'),
  saying(`\\b${side} to (?:the )?(?:toilet |bowl )?cent(?:er|re)(?:line)?[^.{]{0,14}<LN>`, 'g'),
  saying(`<LN> (?:from|off) (?:the )?cent(?:er|re)(?:line)?[^.{]{0,20}\\bto\\b[^.{]{0,12}${side}\\b`, 'g'),
];
const FROM_CENTER = fromCenter(SIDE);
const FROM_CENTER_BESIDE = fromCenter(BESIDE);
const BACK = /\b(?:back wall|behind|rear|rough(?:ed)?[- ]?in|rough)\b/;
const FRONT = [
  saying('\\bfront(?: edge)? of (?:the )?(?:bowl|toilet|john|commode|seat)\\b[^.{]{0,24}<LN>'),
  saying(
    '<LN>(?: of)?(?: clear(?:ance)?| open| free)?(?: floor| space)? in front(?! of the (?:sink|vanity|lav|shower|tub))',
  ),
  saying('<LN>(?: clear)? to (?:the )?[a-z]+ in front\\b'),
  // "21 1/2 in front": the "in" was taken for inches.
  saying('<L> front\\b(?! of the (?:sink|vanity|lav|shower|tub))'),
  saying('\\b(?:bowl|toilet) front to (?:the )?[a-z]+[^.{]{0,12}<LN>'),
  saying('\\bfront (?:clearance|space)\\b[^.{]{0,12}<LN>'),
  saying('\\b(?:bowl|toilet) to (?:the )?(?:door|vanity|tub|wall)\\b[^.{]{0,12}<LN>'),
];
const CENTERS = saying(
  '<LN>(?: on)? cent(?:er|re)s?(?: to cent(?:er|re))?[^.{]{0,24}\\b(?:bidet|sink|lav|urinal|toilet)\\b|\\b(?:bidet|urinal)\\b[^.{]{0,24}<LN>(?: on)? cent(?:er|re)',
);

/** Room around a toilet. A distance to a wall that may be the one behind is not taken for the side. */
export const toilets: Reader = (said) => {
  if (!TOILET.test(said.words)) return [];
  const centered = /\bcent(?:er|re)/.test(said.words);
  const patterns = BACK.test(said.words) ? FROM_CENTER_BESIDE : FROM_CENTER;
  const sides = centered
    ? patterns.flatMap((p) => allMatched(said, p)).filter((v) => v.compare(8) >= 0 && v.compare(48) < 0)
    : [];
  const nearest = least(sides);
  const front = FRONT.map((p) => matched(said, p)).find((v) => v !== null);
  const apart = matched(said, CENTERS);
  const out = [];
  if (nearest) {
    const told = /\b(?:vanity|tub|cabinet|shower|partition|side|left|right|both)\b/.test(said.words);
    const roughIn = /\bflange\b/.test(said.words) && !told;
    out.push(
      roughIn
        ? cannotSay('toilet side clearance', 'whether that is the wall at the side or the one behind', 'IPC 405.3.1', {
            figure: `${nearest.toFraction(true)} in`,
            limit: '15 in',
          })
        : toiletSide(nearest),
    );
  }
  if (front && front.compare(6) > 0) out.push(toiletFront(front));
  if (apart && apart.compare(12) > 0) out.push(toiletCenters(apart));
  return out;
};

const SINK_FRONT = saying(
  '<LN>(?: of)?(?: clear(?:ance)?| open| free)?(?: floor| space)? in front of (?:the )?(?:sink|vanity|lav)\\b',
);
const SHOWER_FRONT = saying(
  '<LN>(?: of)?(?: clear(?:ance)?| open| free)?(?: floor| space)? in front of (?:the )?shower\\b|^(?!.*\\b(?:toilet|bowl|sink|vanity)\\b).*\\bshower\\b.*<LN>(?: of)? clear (?:floor|space)\\b',
);
const SHOWER = saying(
  '\\bshower(?: stall| pan| base| room)?(?: is| measures| comes out| ends up| works out| finished?| inside)*(?: at| to| only)* <LN> (?:x|by) <LN>',
);

/** One side told: "the stall comes to 29 and a half inside". */
const SHOWER_SIDE = saying(
  '\\bshower (?:stall|pan|base)\\b[^.{]{0,30}<LN>(?: (?:inch|inches|in))? (?:inside|finished|clear|across)\\b',
);

export const showersAndSinks: Reader = (said) => {
  const out = [];
  const sink = matched(said, SINK_FRONT);
  const shower = matched(said, SHOWER_FRONT);
  if (sink) out.push(lavatoryFront(sink));
  if (shower) out.push(showerFront(shower));
  const stall = SHOWER.exec(said.words);
  const sides = [stall?.[1], stall?.[2]].flatMap((id) =>
    id === undefined ? [] : (inchesOf(said.figures[Number(id)]) ?? []),
  );
  const smallest = sides.length === 2 ? least(sides) : null;
  // Smaller than this is a tile or a niche.
  if (smallest && smallest.compare(18) > 0 && !/\bniche\b/.test(said.words)) out.push(showerInside(smallest));
  const side = sides.length === 0 ? matched(said, SHOWER_SIDE) : null;
  if (side && side.compare(18) > 0 && side.compare(48) < 0) {
    const verdict = showerInside(side);
    out.push(verdict.result === 'fits' ? dependsOn(verdict, 'the other side of the shower') : verdict);
  }
  return out;
};
