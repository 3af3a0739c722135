import { remembered } from './reading/remembered.ts';
import type { Computed, NoteFacts, SiteFacts } from './types.ts';

type Caution = Computed['cautions'][number];

interface Hazard {
  hazard: string;
  text: string;
  source: string;
  /** Words of work that call for it. */
  when: RegExp;
  /** Only in houses built before this year, or of unknown year where the note itself names an old material. */
  before?: number;
}

const DEFER = 'Local code and the licensed trade decide.';

const HAZARDS: readonly Hazard[] = [
  {
    hazard: 'power off',
    text: `Power off at the breaker, lock or tag it, and prove the wires dead with a tester that you have just tried on a live one. ${DEFER}`,
    source: 'OSHA 29 CFR 1910.333 and 1910.147 (from memory)',
    when: /\b(?:outlet|outlets|receptacle|gfci|gfi|switch|dimmer|breaker|panel|light fixture|recessed|disposal receptacle|splice|junction box|circuit|wire nut|neutral lug)\b/,
  },
  {
    hazard: 'lead paint',
    text: `House from before 1978: take painted surfaces as lead paint until a test says otherwise. Contain the dust, wet methods, HEPA vacuum, no dry sanding or torch; certified renovator rules apply. ${DEFER}`,
    source: '40 CFR 745 Subpart E (EPA renovation, repair and painting rule)',
    when: /\b(?:scrap\w*|sand(?:ed|ing)? (?:the )?(?:paint|trim|casing|door|sill)|repaint\w*|old paint|coats of paint|peeling|bubbled|window (?:frame|sash)|old window|sash|casing|demo\w*|strip(?:ping)? (?:the )?(?:paint|trim))\b/,
    before: 1978,
  },
  {
    hazard: 'asbestos',
    text: `May hold asbestos: leave it alone, keep it wet or covered, and have a sample tested before anybody cuts, scrapes or sands. Removal is for a licensed contractor. ${DEFER}`,
    source: '40 CFR 61 Subpart M (NESHAP); OSHA 29 CFR 1926.1101',
    when: /\b(?:9 ?x ?9|nine by nine|black glue|black mastic|cutback|popcorn ceiling|vermiculite|transite|asbestos|pipe lagging|old sheet vinyl)\b/,
  },
  {
    hazard: 'silica dust',
    text: `Cutting, grinding or drilling masonry, concrete, stone or tile makes silica dust: cut wet or with a shroud and HEPA vacuum, and wear a respirator. ${DEFER}`,
    source: 'OSHA 29 CFR 1926.1153, Table 1',
    when: /\b(?:(?:cut|cutting|saw ?cuts?|sawcut|grind|grinding|ground|core|coring|drill|drilling|jackhammer|chip)\b.{0,40}\b(?:concrete|slab|brick|block|stone|tile|mortar|masonry|paver|pavers|joint|curb|footing)|sawcuts?)\b/,
  },
  {
    hazard: 'gas',
    text: `Gas work: shut the valve, no flame, and test every joint with soap or a gauge before it is lit. If you smell gas, leave and call the gas company. ${DEFER}`,
    source: 'IFGC (NFPA 54) pressure test; common practice',
    when: /\b(?:gas line|gas pipe|gas valve|gas flex|gas connector|gas leak|smell gas|gas smell|black pipe)\b/,
  },
  {
    hazard: 'sewer gas',
    text: `An open drain lets sewer gas in: plug or cap it, keep traps wet, air the room. ${DEFER}`,
    source: 'IPC 1002 (traps); common practice',
    when: /\b(?:open drain|toilet (?:is )?(?:off|out|pulled)|pulled the toilet|sewer smell|sewer gas|closet flange|cleanout)\b/,
  },
  {
    hazard: 'structure',
    text: `May carry load: shore before you cut, and have an engineer or the building office say what may be cut. ${DEFER}`,
    source: 'IRC R502.8 (notching and boring of joists)',
    when: /\b(?:load bearing|bearing wall|cut (?:the |a )?joist|notch\w*|sistered?|cracked joist|rotted joist|header|lintel|ledger|beam)\b/,
  },
  {
    hazard: 'mould',
    text: `Wet or mouldy stuff: find and stop the water first, keep the dust down, mask and gloves; over about 10 sq ft call a remediation firm. ${DEFER}`,
    source: 'EPA 402-K-02-003, A Brief Guide to Mold (10 sq ft)',
    when: /\b(?:mold|mould|moldy|mouldy|mildew)\b/,
  },
  {
    hazard: 'hot water',
    text: `Over 120 F at the tap scalds: turn it down at the limit stop or mixing valve and measure again. ${DEFER}`,
    source: 'CPSC 5098 (120 F); ASSE 1016 / 1070',
    when: /\b(?:water (?:heater|is|at|temp\w*)?.{0,30}\b1[2-5]\d\b|scald\w*|too hot.{0,40}(?:tub|tap|shower|water)|(?:tub|tap|shower|water).{0,60}too hot)/,
  },
  {
    hazard: 'ladder',
    text: `Ladder or roof work: tie off, three points of contact, nobody alone over 6 ft without fall protection. ${DEFER}`,
    source: 'OSHA 29 CFR 1926.501 and 1926.1053',
    when: /\b(?:roof|ridge|gutter|chimney|second stor(?:y|ey)|extension ladder|scaffold\w*|soffit|fascia)\b/,
  },
];

/** Cautions that the job's own words call for, each once, with the notes that named the work. */
export function cautionsIn(notes: readonly NoteFacts[], site: SiteFacts): Caution[] {
  const built = site.builtYear ?? builtIn(notes);
  const old = (h: Hazard) => h.before === undefined || (built !== null && built < h.before);
  const calling = new Map<Hazard, string[]>();
  for (const { text, noteId } of notes)
    for (const hazard of hazardsIn(text)) {
      const known = calling.get(hazard);
      if (known) known.push(noteId);
      else calling.set(hazard, [noteId]);
    }
  return HAZARDS.filter(old).flatMap((h) => {
    const noteIds = calling.get(h);
    return noteIds ? [{ hazard: h.hazard, text: h.text, source: h.source, noteIds }] : [];
  });
}

const hazardsIn = remembered((text) => {
  const said = text.toLowerCase();
  return HAZARDS.filter((h) => h.when.test(said));
});

const DECADES: Readonly<Record<string, number>> = {
  ten: 10,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
const UNITS = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** The year that a note says the house was built: "built in fifty seven", "house is nineteen sixty eight". */
export function builtIn(notes: readonly NoteFacts[]): number | null {
  for (const { text } of notes) {
    const year = yearIn(text);
    if (year) return year;
  }
  return null;
}

const yearIn = remembered((text): number => {
  const said = text.toLowerCase();
  const digits = /\b(?:house|home|place|building|built)\b[^.]{0,30}?\b(1[89]\d\d|20[0-2]\d)\b/.exec(said);
  if (digits) return Number(digits[1]);
  const spoken =
    /\b(?:house|home|place|building|built)\b[^.]{0,30}?\b(?:in|is|from|was)\s+(?:(nineteen|eighteen)[ -])?(ten|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](one|two|three|four|five|six|seven|eight|nine))?\b/.exec(
      said,
    );
  if (spoken)
    return (
      (spoken[1] === 'eighteen' ? 1800 : 1900) +
      (DECADES[spoken[2]!] ?? 0) +
      Math.max(0, UNITS.indexOf(spoken[3] ?? ''))
    );
  return 0;
});
