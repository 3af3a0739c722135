import { describe, expect, it } from 'vitest';
import { inTheCold } from '../../server/takeoff/waits/cold.ts';
import { WORKS } from '../../server/takeoff/waits/works.ts';

/** What was published of a wait, hours from the shortest to the longest given, and where. */
type Row = [from: number, to: number, source: string];

/** By product; where a step takes a time of its own, by product and step. */
const PUBLISHED: Readonly<Record<string, readonly Row[]>> = {
  'rapid thinset': [
    [2, 4, 'flooringclarity.com ?p=24718, how long tile sets before grouting'],
    [2, 8, 'engineerfix.com, how long to let tile set before grouting'],
  ],
  'unmodified thinset': [
    [48, 48, 'mmsausa.com/bulletin/5: until the bond cannot be broken, usually two or more days'],
    [24, 72, 'flooringclarity.com ?p=26347, when to grout tile'],
  ],
  thinset: [
    [24, 24, 'ehow.co.uk/info_8627364, modified'],
    [24, 24, 'flooringclarity.com ?p=24718, standard'],
    [24, 48, 'flooringclarity.com ?p=26347, modified: the longer end is the habit for floors'],
  ],
  'epoxy grout': [
    [120, 168, 'eathealthy365.com, how long does epoxy grout take to cure: full cure and water'],
    [24, 24, 'engineerfix.com, how long for grout to dry before showering: first use'],
  ],
  grout: [
    [48, 72, 'engineerfix.com, how long to wait after grouting shower'],
    [48, 72, 'didyouknowthisabout.com, how long can you shower after grouting'],
  ],
  'concrete: seal': [
    [336, 672, 'concretesealerstore.com, when to seal new concrete: 2 to 4 weeks, 28 days the standard'],
    [672, 672, 'howlongdo.com/articles/how-long-before-you-seal-concrete: 28 days for most new slabs'],
  ],
  'wood flooring to get used to the room': [
    [72, 168, 'mrhardwoodinc.com, why does new flooring need to acclimate: 3 to 7 days'],
    [120, 168, 'coohom.com, how long should hardwood floors acclimate: solid, 5 to 7 days'],
  ],
  'grout: walk on': [
    [24, 24, 'engineerfix.com, how long after grout can you walk on tile'],
    [24, 72, 'engineerfix.com, how long should grout dry before walking on it'],
  ],
  'setting compound': [
    [1 / 3, 3.5, 'canyonpropertysolutions.ca, how long does drywall mud take: 20 to 210 minutes'],
    [1 / 3, 1.5, 'wconline.com/articles/84384: 20, 45 or 90 minutes'],
  ],
  'joint compound': [
    [24, 24, 'hunker.com/13401223, how long to let drywall mud dry'],
    [24, 24, 'tilen.space, how long does drywall joint compound take to dry'],
  ],
  'oil primer': [
    [24, 24, 'sprayerguid.com, how long does oil-based primer take to dry'],
    [24, 24, 'greenyplace.com, can I paint 2 days after primer: up to 24 hours'],
  ],
  primer: [
    [3, 4, 'seniorcare2share.com ?p=277121, latex'],
    [2, 4, 'thepaintingadvice.com ?p=286, latex'],
  ],
  'oil paint': [
    [24, 24, 'sudotool.com, how long between coats of paint'],
    [24, 24, 'wikihow.com, how long to wait between coats of paint'],
  ],
  paint: [
    [4, 4, 'sudotool.com, how long between coats of paint'],
    [2, 4, 'wikihow.com, how long to wait between coats of paint'],
  ],
  silicone: [
    [24, 24, 'calendar-australia.com, how long should you leave silicone to dry'],
    [24, 48, 'explainthat.org, how long should caulking dry before showering'],
  ],
  caulk: [
    [2, 4, 'thepaintingadvice.com, how long does caulk take to dry before painting'],
    [1, 4, 'engineerfix.com, how long does caulk need to dry before painting'],
  ],
  'caulk: use': [
    [24, 24, 'explainthat.org, how long should caulking dry before showering: acrylic latex'],
    [2, 24, 'ask.com, how long does caulk take to dry: water after 2 to 12, cured in 24'],
  ],
  concrete: [
    [72, 72, 'UFGS 03700 (ufgscriteriadocreport.tpub.com/03700): moist cure of type III'],
    [72, 72, 'oncodes.ca/basement/curing-concrete (CMHC): forms in place at least three days'],
    [72, 168, 'ehow.com/decision_6888371, small jobs before building: three days at least, seven better'],
  ],
  'concrete: park on': [
    [168, 168, 'tristar-concrete.com, how long to wait before driving on new concrete'],
    [168, 168, 'drivewaygeek.com, concrete driveway curing time chart'],
  ],
  'concrete: walk on': [
    [24, 24, 'yourquickinfo.com, how long do concrete foundations take to dry'],
    [24, 48, 'homeguide.com, concrete driveway contractors'],
  ],
  'floor leveler': [
    [12, 24, 'engineerfix.com, how long before you can tile on self-leveling compound'],
    [4, 16, 'constructioncanada.net, what lurks beneath, p. 4: tile 4, other coverings 16'],
  ],
  'floor leveler: walk on': [
    [2, 4, 'engineerfix.com, how long before you can tile on self-leveling compound'],
    [1, 4, 'flooringclarity.com, how long before you can tile on self levelling compound'],
  ],
  'liquid membrane': [
    [24, 72, 'homestery.com, perform the flood test'],
    [72, 72, 'visualfoodie.com, testing the waterproofing: cure 4,320 minutes'],
  ],
  'water-base finish': [
    [3, 3, 'thisoldhouse.com 203303: two coats in three hours'],
    [4, 6, 'floorfashionsandmore.com, refinishing: the longer end in a humid climate'],
  ],
  'floor finish': [
    [24, 24, 'floorfashionsandmore.com, refinishing: oil, at least'],
    [24, 24, 'greenyplace.com, how long after water-based polyurethane: oil, in socks'],
  ],
  'floor finish: put rugs on': [
    [336, 336, 'jeffskierkadesigns.com, when to move furniture after refinishing: oil, 14 days'],
    [168, 336, 'greenyplace.com, how soon can you put furniture on hardwood floors: water-base 7 to 14 days'],
  ],
  'floor finish: walk on': [
    [24, 24, 'floorfashionsandmore.com, refinishing'],
    [24, 48, 'greenyplace.com, how soon can you put furniture on hardwood floors'],
  ],
  'solvent cement': [
    [6, 6, 'manualshelf.com, plastics technical manual p. 96: 4 to 8 in, up to 180 psi, 60 to 100 F'],
    [0.25, 0.5, 'hunker.com/12000340: CPVC of 1/2 to 2 in, under 160 psi'],
  ],
};

/** Each product, and each step whose own time holds for every product of its work, as the table names them. */
const waited = WORKS.flatMap(({ products, steps }): [string, number][] => [
  ...products.map((p): [string, number] => [p.name, p.hours]),
  ...steps
    .filter((s) => s.hours !== undefined)
    .map((s): [string, number] => [`${products.at(-1)!.name}: ${s.verb}`, s.hours!]),
]);

describe('waits against what is published', () => {
  it.each(waited)('%s: %d h is in no published range too short, and the safe end of one', (name, hours) => {
    const rows = PUBLISHED[name] ?? [];
    expect(rows.length).toBeGreaterThanOrEqual(2);
    for (const [from, , source] of rows) expect(hours, source).toBeGreaterThanOrEqual(from);
    expect(rows.some(([, to]) => hours >= to)).toBe(true);
  });

  it('publishes nothing for what is not waited for', () => {
    expect(Object.keys(PUBLISHED).sort()).toEqual(waited.map(([name]) => name).sort());
  });

  it('mortar at 45 F: three to four days before grout (hanaleikauaivacation.com, 40 to 50 F, 72 to 96 h)', () => {
    const { hours } = inTheCold(24, 'cement', 45);
    expect(hours).toBeGreaterThanOrEqual(72);
    expect(hours).toBeLessThanOrEqual(96);
  });

  it('latex under 50 F may not set (renovateyourworld.com 2017/01; palmdesert.moorhousecoating.com 2013/9)', () => {
    expect(inTheCold(4, 'paint', 49).said).toMatch(/under 50 F/);
    expect(inTheCold(4, 'paint', 50).said).not.toMatch(/under/);
  });
});
