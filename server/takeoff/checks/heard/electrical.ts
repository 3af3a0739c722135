import type Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import { type BoxFill, boxFill, type Cable } from '../boxFill.ts';
import { boxVolume } from '../boxVolume.ts';
import { breaker } from '../breaker.ts';
import { basinReceptacle, counterSpacing, unprotected, wallReceptacles, wallSpacing } from '../receptacle.ts';
import type { Verdict } from '../verdict.ts';
import { clausesOf, countOf, HOW_MANY, inchesOf, matched, type Reader } from './reader.ts';

const GAUGES: Readonly<Record<string, string>> = { fourteen: '14', twelve: '12', ten: '10', two: '2', three: '3' };

/** "Fourteen two" as it is written, `14/2`, and "two fourteen twos", which was heard as the number 214. */
function cablesWritten({ words, figures }: Said): string {
  return (
    words
      .replace(
        /\b(fourteen|twelve|ten)[ -](two|three)(?='?s?\b)/g,
        (_, gauge, wires) => `${GAUGES[gauge]}/${GAUGES[wires]}`,
      )
      // "Three 14 2 romex": the gauge and its wires as figures of their own.
      .replace(/(\{N\d+\} )?\{N(\d+)\} \{N(\d+)\}(?! ?(?:x|by)\b)/g, (all, count = '', a: string, b: string) => {
        const [gauge, wires] = [a, b].map((id) => figures[Number(id)]!.value.valueOf());
        return [14, 12, 10].includes(gauge!) && [2, 3].includes(wires!) ? `${count}${gauge}/${wires}` : all;
      })
      .replace(/\{N(\d+)\} (two|three)s\b/g, (all, id: string, wires: string) => {
        const value = figures[Number(id)]!.value.valueOf();
        const gauge = value % 100;
        const count = Object.entries({ two: 2, three: 3, four: 4 }).find(([, n]) => n === Math.floor(value / 100))?.[0];
        return count && [14, 12, 10].includes(gauge) ? `${count} ${gauge}/${GAUGES[wires]}` : all;
      })
  );
}

const CABLES = saying(`${HOW_MANY}?(?:runs? of |cables? of |pieces? of |lines? of )?\\b(14|12|10)[-/ ](2|3)\\b`, 'g');
const DEVICES = saying(
  `${HOW_MANY}?(?:(?:gfcis?|duplex(?:es)?|dimmer|single[- ]pole|three[- ]way)(?: (?:receptacles?|outlets?|switch(?:es)?))?|receptacles?|outlets?|switch(?:es)?|dimmers?|timers?)\\b(?! box)`,
  'g',
);
const UNNAMED = saying(`${HOW_MANY}(?:devices?|yokes?)\\b(?! box)`, 'g');
const LOOSE = saying(`${HOW_MANY}(?:{X(\\d+)}|#?(14|12|10)(?: gauge)?)(?: \\w+)? (?:wires?|conductors?|thhn)\\b`, 'g');
const STAMPED = saying(
  '\\b(?:stamped|marked|rated|says?|stamp is)(?: at| for)? <N>(?! (?:hours?|amps?))|<N> (?:cube[rsd]?|cubics?|cu)\\b',
);
const ASKED =
  /\b(?:fill|fit|fits|enough room|too (?:small|much|many|tight|full)|gonna work|going to work|big enough|(?<=[a-z}] |, )(?:ok\b|okay)|legal|pass)\b|\bstamp\b|\?/;

/** What a note puts into a box, against the box. */
export const boxes: Reader = (said) => {
  if (!/\b(?:box|gang|octagon)\b/.test(said.words) && !said.figures.some((f) => f.unit === 'box')) return [];
  const words = cablesWritten(said);
  const cables: Cable[] = [...words.matchAll(CABLES)].map((match) => ({
    count: countOf(said, match[1], match[2]) ?? 1,
    gauge: Number(match[3]),
    conductors: Number(match[4]),
    // Cable of this kind carries a bare ground besides what its name counts.
    ground: true,
  }));
  const loose = [...words.matchAll(LOOSE)].flatMap((match) => {
    const gauge = match[3] !== undefined ? said.figures[Number(match[3])]!.value.valueOf() : Number(match[4]);
    const count = countOf(said, match[1], match[2]);
    return count === null || ![18, 16, 14, 12, 10, 8, 6].includes(gauge) ? [] : [{ gauge, count }];
  });
  const volume = volumeIn(said);
  if ((!cables.length && !loose.length) || (!volume && !ASKED.test(words))) return [];
  return [boxFill({ cables, loose, devices: devicesIn(said, words), clamps: clampsIn(words), volume })];
};

function volumeIn(said: Said): Fraction | null {
  const stated = said.figures.find((f) => f.unit === 'cu in')?.value;
  if (stated) return stated;
  const stamped = matched(said, STAMPED);
  return stamped && stamped.compare(5) >= 0 ? stamped : boxVolume(said.words, said.figures.map(inchesOf));
}

const NO_DEVICE = /\b(?:no|without an?y?) (?:devices?|yokes?)\b|\b(?:just|only) (?:a )?(?:splices?|junction)\b/;

/** "Hall three way. Two 14/2 and the switch": the switch is the three way of which the note speaks. */
const SAME_AGAIN = /\b(?:plus|and|with) the (?:switch|outlet|receptacle|dimmer|device)\b/;
const ITS_KIND = /^(?:[a-z]+ ){0,3}(?:three[- ]way|single[- ]pole|gfci|duplex|dimmer)(?=[.:])/;

/** "Two devices", else those named one by one, whichever are more. */
function devicesIn(said: Said, words: string): BoxFill['devices'] {
  if (NO_DEVICE.test(words)) return [];
  const once = SAME_AGAIN.test(words) ? words.replace(ITS_KIND, '') : words;
  const counted = (pattern: RegExp) =>
    [...once.matchAll(pattern)].reduce((sum, match) => sum + (countOf(said, match[1], match[2]) ?? 1), 0);
  const length = Math.min(Math.max(counted(DEVICES), counted(UNNAMED)), 12);
  return Array.from({ length }, () => ({ gauge: null }));
}

function clampsIn(words: string): boolean | null {
  if (
    /\b(?:no|without)(?: (?:internal|inside|cable|wire))* clamps?\b|\bclamps? (?:are |is )?outside\b|\b(?:clamps?|connectors?) (?:are|is) (?:the |all )?(?:outside|external)\b/.test(
      words,
    )
  )
    return false;
  return /\bclamps?\b/.test(words) ? true : null;
}

const AMPS = saying(
  "<E>|\\b(?:on|with|to|off)(?: a| the| an)? (?:breaker )?<N>(?: ?amp|(?: breaker)?(?:$|[ ,.?]))|\\bbreaker\\b[^.{]{0,24}(?:\\bis|'s)(?: an?)? <N>|\\ban? <N>(?: on it)? in the (?:panel|box|sub ?panel)\\b",
  'g',
);
const GAUGE = saying(
  '{X(\\d+)}|#(14|12|10|8|6)\\b|\\b(14|12|10|8|6)[-/](?:2|3)\\b|\\b(?:number|no) (14|12|10|8|6)\\b|{N(\\d+)} (?:ga(?:uge)? )?(?:wire|copper|conductors?)\\b',
);

/** A wire and the breaker before it, told in one clause, or alone in the note. */
export const breakers: Reader = (said) => {
  const words = cablesWritten(said);
  const found = clausesOf(words).flatMap((clause) => {
    const gauge = gaugeIn(said, clause);
    const amps = ampsIn(said, clause);
    return gauge !== null && amps !== null ? [{ gauge, amps }] : [];
  });
  const gauge = gaugeIn(said, words);
  const amps = said.figures.find((f) => f.unit === 'A')?.value.valueOf() ?? ampsIn(said, words);
  if (!found.length && /\b(?:breaker|panel|fuse)\b/.test(words) && gauge !== null && amps !== null)
    found.push({ gauge, amps });
  // "Can't see how heavy it is, is that wire all right on a thirty?": what is missing is said.
  const asked =
    /\bwire\b/.test(words) && /\b(?:ok|okay|all right|alright|right|enough|legal|leave it)\b|\?/.test(words);
  if (!found.length && gauge === null && amps !== null && asked && /\bbreaker\b/.test(words))
    return [breaker({ gauge: null, breaker: amps })];
  const metal = /\balumin(?:i)?um\b/.test(words) ? 'aluminum' : 'copper';
  const verdicts = found.map((c) => breaker({ gauge: c.gauge, breaker: c.amps, metal }));
  return verdicts.sort((a, b) => Number(a.result === 'does not fit') - Number(b.result === 'does not fit'));
};

function gaugeIn(said: Said, clause: string): number | null {
  const match = GAUGE.exec(clause);
  if (!match) return null;
  const figure = match[1] === undefined ? null : said.figures[Number(match[1])]!;
  if (figure && figure.kind !== 'gauge') return null;
  // "Fourteen wire": a bare size that wire comes in.
  const bare = match[5] === undefined ? null : said.figures[Number(match[5])]!.value.valueOf();
  if (bare !== null) return [14, 12, 10, 8, 6].includes(bare) ? bare : null;
  return figure?.value.valueOf() ?? Number(match[2] ?? match[3] ?? match[4]);
}

function ampsIn(said: Said, clause: string): number | null {
  const plain = /\b(15|20|25|30|35|40|45|50|60)(?: amp)? breaker\b/.exec(clause);
  if (plain) return Number(plain[1]);
  const told = [...clause.matchAll(AMPS)].map((m) => said.figures[Number(m.slice(1).find(Boolean))]!.value.valueOf());
  return told.find((amps) => [15, 20, 25, 30, 35, 40, 45, 50, 60].includes(amps)) ?? null;
}

const AWAY = saying(
  '\\b(?:outlet|receptacle|plug|gfci)\\b[^.{]{0,24}<LN> (?:from|off|away|to)\\b[^.,]{0,20}\\b(sink|basin|lav|tub|shower)\\b|<LN> (?:from|off|away from)(?: the)?(?: edge of the)? (sink|basin|lav|tub|shower)\\b',
);
const APART = saying(
  '\\bcounter\\b[^.{]{0,40}<LN> apart|<LN> (?:apart|between)[^.{]{0,20}\\bcounter\\b|\\bcounter\\b[^.]{0,60}<LN> between (?:the )?(?:two |\\{N\\d+\\} )?(?:outlets|receptacles|plugs)\\b',
);

const PLUGS = '(?:outlets?|receptacles?|plugs?)';
const WALL_APART = saying(`\\b${PLUGS}\\b[^.{]{0,30}<L> apart|<L> (?:apart|between)[^.{]{0,24}\\b${PLUGS}\\b`);
const WALL_LONG = saying(
  "<L>(?: (?:of|long|unbroken|clear|solid))* (?:of )?walls?\\b|\\bwalls?(?:'s| is| runs| measures)*(?: about)? <L>(?: long)?(?! (?:high|tall))",
);
const PLUGS_TOLD = saying(`${HOW_MANY}(?:[a-z]+ )?${PLUGS}\\b`);

/** Receptacles along a wall of a room: how far apart, or how many where the note asks whether they do. */
function alongWall(said: Said): Verdict[] {
  const { words } = said;
  if (!/\bwalls?\b/.test(words) || /\b(?:counter|kitchen|island|backsplash)\b/.test(`${words} ${said.area ?? ''}`))
    return [];
  const apart = matched(said, WALL_APART);
  if (apart) return [wallSpacing(apart)];
  const wall = matched(said, WALL_LONG);
  const told = PLUGS_TOLD.exec(words);
  const count = told ? countOf(said, told[1], told[2]) : null;
  return wall && count !== null && ASKED_PLUGS.test(words) ? [wallReceptacles(wall, count)] : [];
}

const ASKED_PLUGS = /\b(?:enough|ok|okay|all right|legal|code|do it|pass|need|right)\b|\?/;

export const receptacles: Reader = (said) => {
  if (!/\b(?:outlets?|receptacles?|plugs?|gfcis?)\b/.test(said.words)) return [];
  const out = [];
  const away = AWAY.exec(said.words);
  const figure = away && inchesOf(said.figures[Number(away[1] ?? away[3])]);
  if (away && figure) {
    const basin = /sink|basin|lav/.test(away[2] ?? away[4]!);
    if (
      /\b(?:not?|isn't|without|no)(?: a| on a)? gfcis?\b|\b(?:regular|standard|plain) (?:outlet|receptacle)\b/.test(
        said.words,
      )
    )
      out.push(unprotected(figure));
    if (basin && /\b(?:bath|bathroom|powder|vanity|basin|lav)\b/.test(`${said.words} ${said.area ?? ''}`))
      out.push(basinReceptacle(figure));
  }
  const apart = matched(said, APART);
  if (apart) return [...out, counterSpacing(apart)];
  return [...out, ...alongWall(said)];
};
