import Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import { concreteScrew } from '../anchor.ts';
import { lumberIn, matched, type Reader } from './reader.ts';

const SCREW = '(?:concrete screws?|masonry screws?|tapcons?|tap cons?|block screws?)';
const DIAMETER = saying(`<L>(?: inch)?(?: by <L>)? ${SCREW}|\\b${SCREW} <L>|<L> (?:x|by) <L> ${SCREW}`);
const LENGTH = saying(
  `<L> (?:long|inch long|ones)\\b|(?:x|by) <L>(?: inch)? ${SCREW}|\\b${SCREW}[^.{]{0,12}{L\\d+} (?:x|by) <L>`,
);
const THROUGH = saying(
  '\\bthrough (?:a |an |the |that )?<L>|<L>(?: inch)?(?: thick)?(?: [a-z]+)? (?:strapping|furring|strips?|plates?|boards?|ledger|cleats?|sleepers?|ply|plywood|sill)\\b|^<L> (?:strapping|furring)|<L>(?: inch)? of (?:wood|plate|lumber|board|ply(?:wood)?|strapping)\\b',
);
const HOLE = saying(
  '\\b(?:drill(?:ed|ing)?|bit|holes?|bored)\\b(?: with| is| are| at| a| an| to)*(?: a)? <L>(?! deep)|<L>(?: inch)? (?:bit|holes?)\\b',
);
const DEPTH = saying('<L> deep\\b');

/** "Only getting three quarters of an inch into the block". */
const BITES = saying(
  '\\b(?:getting|got|gets|only|bit(?:es?|ing)|grab(?:s|bing)?|goes|going)(?: [a-z]+){0,2} <L> (?:into|of bite)\\b|\\b(?:embedment|embedded|bites?)(?: (?:is|of|only|about))* <L>',
);

/** A concrete screw: how deep it bites, and its hole. */
export const anchors: Reader = (said) => {
  if (!new RegExp(`\\b${SCREW}\\b`).test(said.words)) return [];
  const diameter = matched(said, DIAMETER);
  return concreteScrew({
    diameter: diameter && diameter.compare(new Fraction(1, 2)) <= 0 ? diameter : null,
    length: matched(said, LENGTH),
    through: matched(said, THROUGH) ?? flatLumber(said),
    hole: matched(said, HOLE),
    holeDepth: matched(said, DEPTH),
    bites: matched(said, BITES),
  });
};

/** A `2x4` that lies flat is 1-1/2 in thick, a `1x4` 3/4 (PS 20). */
function flatLumber(said: Said): Fraction | null {
  const named = lumberIn(said);
  return named && new Fraction(named.thick === 2 ? '1.5' : '0.75');
}
