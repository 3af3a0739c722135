import { describe, expect, it } from 'vitest';
import { compute } from '../../server/takeoff/index.ts';
import { inTheCold } from '../../server/takeoff/waits/cold.ts';

/** Ready day and wait of the last step that notes of one area tell of. Monday 1 June 2026 is the day of the first. */
function waits(...notes: [saidAt: string, text: string][]) {
  const told = notes.map(([at, text], k) => ({ noteId: `n${k}`, saidAt: `2026-06-${at}:00`, text, facts: [] }));
  return compute(told, { areas: ['bath'], builtYear: null }).waits.map(
    (w) => `${w.task}: ${w.waitingFor}: ${w.readyOn}`,
  );
}

describe('waits by published ranges, safe end', () => {
  it.each<[string, [string, string], string[]]>([
    [
      // Modified thin-set 24 h at about 70 F before grout: ehow.co.uk/info_8627364.
      'modified thin-set',
      ['01T10:00', 'floor tile is set with modified thinset. Grout is next'],
      ['grout the bath floor: thinset, 24 h at 70 F: 2026-06-02'],
    ],
    [
      // Dry-set: until the bond cannot be broken, usually two or more days: mmsausa.com/bulletin/5.
      'dry-set',
      ['01T10:00', 'tile on the wall is set, dry-set mortar. then grout'],
      ['grout the bath wall: unmodified thinset, 48 h at 70 F: 2026-06-03'],
    ],
    [
      // Large tile 48 to 72 h: flooringclarity.com ?p=26347; 72 h: engineerfix.com, how long to let tile set before grouting.
      'large tile',
      ['01T10:00', 'floor tile is set with modified thinset, 24x24 porcelain. Grout is next'],
      ['grout the bath floor: thinset, 72 h at 70 F: 2026-06-04'],
    ],
    [
      // Grout before shower water 72 h; labels differ, common practice, no source.
      'grout',
      ['02T10:00', 'grouted the shower. use the shower next'],
      ['use the bath shower: grout, 72 h at 70 F: 2026-06-05'],
    ],
    [
      // Silicone, water after 24 h: enviroliteracy.org.
      'silicone',
      ['04T16:00', 'siliconed the tub at 4, then fill the tub'],
      ['use the bath tub: silicone, 24 h: 2026-06-05'],
    ],
    [
      // Latex paint, recoat 2 to 4 h: engineerfix.com, "how long should latex paint dry between coats".
      'paint',
      ['01T08:00', 'painted the walls, second coat is next'],
      ['recoat the bath walls: paint, 4 h at 70 F, until 12:00: 2026-06-01'],
    ],
    [
      // Drying-type compound, 24 h a coat: finehomebuilding.com, "One-day taping".
      'compound',
      ['01T15:00', 'taped the ceiling. sand it tomorrow'],
      ['sand the bath ceiling: joint compound, 24 h at 70 F: 2026-06-02'],
    ],
    [
      // Moist cure of three days at least: UFGS 03700 (ufgscriteriadocreport.tpub.com/03700).
      'concrete',
      ['01T09:00', 'poured the slab at 9. framing next'],
      ['frame on the bath slab: concrete, 72 h at 70 F: 2026-06-04'],
    ],
    [
      // Cars a few days, seven the safer habit: redlinepavement.com.
      'concrete under a car',
      ['01T09:00', 'poured the pad. park on it after'],
      ['park on the bath pad: concrete, 168 h at 70 F: 2026-06-08'],
    ],
  ])('%s', (_, note, expected) => {
    expect(waits(note)).toEqual(expected);
  });

  it('a label time said beats the range, and the range of another product replaces it', () => {
    expect(waits(['01T10:00', 'floor is set with rapid set, bag says 2 hours then grout'])).toEqual([
      'grout the bath floor: rapid thinset, 2 h on the label, until 12:00: 2026-06-01',
    ]);
    expect(
      waits(['01T10:00', 'floor is set with rapid set, then grout'], ['01T12:00', 'wrong bag, that was unmodified']),
    ).toEqual(['grout the bath floor: unmodified thinset, 48 h at 70 F: 2026-06-03']);
  });
});

describe('cold', () => {
  it.each<[string, Parameters<typeof inTheCold>, number]>([
    // splash.online/articles/winter-tiling-tips: each 8 C (14.4 F) below 21 C (70 F) doubles the cure of cement.
    ['one step down', [24, 'cement', 55.6], 48],
    ['two steps down', [24, 'cement', 41.2], 96],
    ['half a step, rounded up', [24, 'cement', 62.8], 34],
    ['warm gains nothing', [24, 'cement', 85], 24],
    // Drywall Finishing Council, joint compound drying time (copies at info.5y1.org and chasephipps.com): up to 48 h between
    // coats in fair conditions; alahlitrading.com, all purpose joint compound drying time: first coat 24 to 48 h by
    // temperature; engineerfix.com, how long to let joint compound dry: 65 to 80 F is the ideal range.
    ['compound at 65 F', [24, 'compound', 65], 24],
    ['compound at 64 F', [24, 'compound', 64], 48],
    ['compound at 50 F', [24, 'compound', 50], 48],
    ['setting compound is slower too', [5, 'compound', 50], 48],
  ])('%s', (_, given, hours) => {
    expect(inTheCold(...given).hours).toBe(hours);
  });

  it('is read from the notes of the area and told with the wait', () => {
    expect(
      waits(['01T10:00', 'floor tile set, regular thinset, then grout'], ['01T11:00', "it's 55 degrees in here"]),
    ).toEqual(['grout the bath floor: thinset, 50 h at 55 F: 2026-06-03']);
    // Latex not under 50 F: oklahoman.com 2006/02/25 (paint institute).
    expect(waits(['01T08:00', 'painted the trim, 46 degrees out. second coat next'])[0]).toMatch(
      /at 46 F, under 50 F it may not set at all/,
    );
  });

  it("the water's temperature is not the room's", () => {
    expect(waits(['01T10:00', 'floor tile set, thinset, then grout. tub water is 52 degrees'])[0]).toMatch(
      /24 h at 70 F/,
    );
  });
});
