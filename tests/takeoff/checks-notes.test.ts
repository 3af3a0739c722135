import { describe, expect, it } from 'vitest';
import { compute } from '../../server/takeoff/index.ts';

/** The checks that the notes of one area give, as `of: result figure`. */
function told(...texts: string[]) {
  const notes = texts.map((text, k) => ({ noteId: `n${k}`, saidAt: `2026-04-27T1${k}:00:00`, text, facts: [] }));
  return compute(notes, { areas: ['cabin'], builtYear: null }).checks;
}
const words = (...texts: string[]) =>
  told(...texts).map((c) => [c.of, c.result, c.result === 'cannot say' ? c.missing : c.figure].join(': '));

describe('checks read off notes', () => {
  it.each<[string, string[]]>([
    [
      'metal box by the pump, 4 inch square, inch and a half deep, two 14/2 and a 12/2 land there plus a duplex, clamps inside. does that fit',
      ['box fill: does not fit: 21.5 cu in'],
    ],
    ['three gang box stamped 44, got four 12/2s and three switches, no clamps, ok?', ['box fill: fits: 33.75 cu in']],
    [
      'is this box too full? fourteen two in, fourteen two out, one switch, plastic so no clamps, its a 20 cuber',
      ['box fill: fits: 14 cu in'],
    ],
    [
      'two fourteen twos and a receptacle in the round box, will that fit',
      ['box fill: cannot say: the box volume (the stamp in the box)'],
    ],
    [
      'box has 3 14/2 and a gfci, 18 cu in, ok?',
      ['box fill: cannot say: whether there are cable clamps inside the box'],
    ],
    ['the well pump is on 12/2 with a 25 amp breaker', ['wire size and breaker: does not fit: 25 A']],
    ['range is 6/3 on a 50, dryer is 10/3 on a 30', ['wire size and breaker: fits: 30 A']],
    ['found aluminum 12/2 on the 20 amp breaker', ['wire size and breaker: does not fit: 20 A']],
    ["plug's forty inches from the basin in the powder bath", ['receptacle at basin: does not fit: 40 in']],
    ['that outlet is 4 feet from the sink and no gfci on it', ['receptacle without GFCI: does not fit: 48 in']],
  ])('electrical: %s', (text, expected) => {
    expect(words(text)).toEqual(expected);
  });

  it.each<[string, string[]]>([
    [
      'flange sits three eighths below the finished floor',
      ['flange height: does not fit: 0.375 in below the finished floor'],
    ],
    ['closet flange is flush with the finished floor, nice', ['flange height: fits: 0 in below the finished floor']],
    ['flange is half an inch proud of the tile', ['flange height: does not fit: 0.5 in above the finished floor']],
    [
      'flange ended up 1/2 below the tile, got an extra thick ring for it',
      ['flange height: cannot say: how deep the extra-thick ring reaches: its box tells'],
    ],
    [
      'toilet: 15 1/4 from center to the tub, and 21 1/2 in front to the door',
      [
        'toilet side clearance: fits: 15.25 in',
        'toilet front clearance: cannot say: which plumbing code is adopted: 21 in or 24 in',
      ],
    ],
    [
      'flange center is twelve and a half from the wall',
      ['toilet side clearance: cannot say: whether that is the wall at the side or the one behind'],
    ],
    ['shower comes out at 29 and a half by 60 inside', ['shower inside: does not fit: 29.5 in']],
    ['only 19 inches in front of the vanity', ['sink front clearance: does not fit: 19 in']],
    ['2 inch drain drops an inch and a half over 8 feet', ['drain slope: does not fit: 0.1875 in/ft']],
    // A size after a comma is no part of the run: read as 12 ft 3 in, or as a run of 3 in, it would pass.
    ['drain in the crawl is 12 feet, 3 inch pipe, falls two inches', ['drain slope: does not fit: 0.1666 in/ft']],
    ['the drain here is 3 inch and falls two inches', ['drain slope: cannot say: the run and its fall']],
    [
      'flange is flush with the tile, the bowl foot is 7/8 and the toilet bolts are an inch and a half, long enough?',
      ['flange height: fits: 0 in below the finished floor', 'closet bolts: fits: 1.5 in'],
    ],
    [
      'flange sits an inch below the tile, closet bolts are 2 1/4, will they reach',
      [
        'flange height: does not fit: 1 in below the finished floor',
        "closet bolts: cannot say: how thick the bowl's foot is at the bolt hole: measure it",
      ],
    ],
    ['the 3 inch waste line runs 12 feet and falls 3 and a half inches', ['drain slope: fits: 0.2916 in/ft']],
    [
      'does the drain have enough slope, the run is 14 feet',
      ['drain slope: cannot say: how much it falls over the run'],
    ],
    [
      'trap arm on the washer is four feet of inch and a half',
      ['trap to vent: cannot say: which plumbing code is adopted'],
    ],
    ['street pressure at the meter 110 psi', ['water pressure: does not fit: 110 psi']],
    ['shower runs 52 C', ['water temperature: does not fit: 125.6 F']],
    ['hot water at the lav is 118 degrees', ['water temperature: fits: 118 F']],
    ['dryer vent is 22 feet with two elbows and two forty fives', ['dryer vent length: does not fit: 37 ft']],
    ['dryer duct, 18 feet to the gable', ['dryer vent length: cannot say: how many elbows']],
  ])('plumbing: %s', (text, expected) => {
    expect(words(text)).toEqual(expected);
  });

  it.each<[string, string[]]>([
    [
      'drilled inch and a half hole in the 2x4 studs for the wire bundle',
      ['hole in stud: cannot say: whether the wall bears load'],
    ],
    [
      'running inch and a half abs through the non-bearing two by fours, studs are good',
      ['hole in stud: fits: 1.9 in'],
    ],
    [
      'plumber notched a 2x10 joist two inches deep right in the middle of the span',
      ['notch in joist: does not fit: 2 in'],
    ],
    [
      'can I put a two inch hole in these tji joists',
      ["hole in joist: cannot say: the maker's hole chart: no cut in an engineered member without it"],
    ],
    ['5/4 deck boards straight across, joists at 16 on center, legal?', ['joists under deck boards: fits: 16 in']],
    [
      'composite decking, joists are 16 on center, is that ok?',
      ["joists under deck boards: cannot say: the board maker's spacing: composite goes by its own sheet"],
    ],
    ['half inch copper going through a 5/8 hole in the cabinet back', ['hole and part: does not fit: 0.625 in']],
    [
      'filler valve needs an inch and a quarter hole, the hole in the deck is an inch and 3/8',
      ['hole and part: fits: 1.375 in'],
    ],
    [
      'opening is 33 by 82 and a half, its a 2/8 prehung door',
      ['rough opening width: does not fit: 33 in', 'rough opening height: fits: 82.5 in'],
    ],
    [
      'bedroom window, egress, clear opening is 40 by 22 high',
      ['egress opening: fits: 6.1111 sq ft', 'egress height: does not fit: 22 in'],
    ],
    [
      'concrete screws 3/16 by 2 1/4 through the one by four, drilled 5/32',
      ['anchor embedment: fits: 1.5 in', 'anchor hole: fits: 0.1563 in'],
    ],
    [
      'tapcons through inch and a half sleepers, how long do I need',
      ['anchor embedment: cannot say: how long the screw is'],
    ],
    [
      '10 x 60 plank tile, half lap, eighth inch joint',
      ['tile joint: cannot say: whether the tile is rectified or calibrated', 'tile offset: does not fit: 50 %'],
    ],
    [
      'setting 6x24 rectified planks on a third offset with 1/8 joints',
      ['tile joint: fits: 0.125 in', 'tile offset: fits: 33.3333 %'],
    ],
  ])('framing, openings, tile: %s', (text, expected) => {
    expect(words(text)).toEqual(expected);
  });

  it.each<[string, string[]]>([
    [
      'stair risers came out 7 1/2, 7 1/2 and 7 15/16',
      ['riser height: does not fit: 7.9375 in', 'riser variation: does not fit: 0.4375 in'],
    ],
    ['stringers: 7 1/2 rise, 10 run', ['riser height: fits: 7.5 in', 'tread depth: fits: 10 in']],
    ['total rise is 107 inches on the cellar stair, 14 risers', ['riser height: fits: 7.6429 in']],
    ['deck is 5 feet off the grass, railing is 34 high', ['guard height: does not fit: 34 in']],
    ['deck handrail is 1 m high all round. one of the steps is cupped', ['guard height: fits: 39.37 in']],
    ['stair handrail is 39 above the nosing', ['handrail height: does not fit: 39 in']],
    ['pickets on the porch are 4 apart', ['baluster gap: does not fit: 4 in']],
    ['only 6 foot 6 of headroom on the stairs', ['stair headroom: does not fit: 78 in']],
  ])('stairs: %s', (text, expected) => {
    expect(words(text)).toEqual(expected);
  });

  it.each([
    'swapped the gfci in the island box and put the cover back on',
    'need a 4 inch square box and two 12/2 connectors',
    'toilet rough in is 12 inches off the back wall to center',
    'replaced the 20 amp breaker for the dishwasher',
    'air test held 60 psi on the water lines',
    'set the water heater to 130',
    'hung 12 doors, all 32 by 80',
    'three boxes of 1/4 drywall screws for the joist hangers',
    'drove 2x4 studs into the post hole',
    'stairs get 3 coats, treads first',
    'bought 4 windows, 36 by 48 each',
    'cut the rail at 34 and a quarter',
    'stairs are capped, twelve treads and fourteen risers used',
    'need 10 ft of dryer duct and 2 elbows',
    'ok vinyl plank is 22 square foot to the box and the hall is eleven foot ten by fourteen two',
    'bought four closet bolts',
    'need sixteen 5/4 deck boards and six joists',
  ])('no check where none was called for: %s', (text) => {
    expect(words(text)).toEqual([]);
  });

  it.each<[string, string[], string[]]>([
    [
      'the limit said first',
      [
        'sole plate is reading thirty percent, it has to be under sixteen',
        'sole plate is down to nineteen',
        'plate is at 14 percent now',
      ],
      ['moisture: fits: 14 %'],
    ],
    [
      'over it yet',
      ['subfloor reads 21 percent, must be under 12 before the plank goes down'],
      ['moisture: does not fit: 21 %'],
    ],
    ['no limit said', ['studs are at 19 percent'], []],
    [
      'the wettest of several places',
      ['framing has to be under 15 percent. studs at 13, plates 18'],
      ['moisture: does not fit: 18 %'],
    ],
    [
      'each place by its latest reading',
      ['has to get under 15 percent, studs at 19, plates 22', 'studs 12 percent', 'plates 14 percent'],
      ['moisture: fits: 14 %'],
    ],
    [
      'one place measured again, the other not yet',
      ['has to get under 15 percent, studs at 19, plates 22', 'studs 12 percent'],
      ['moisture: does not fit: 22 %'],
    ],
    [
      'measured again without naming the place',
      ['studs at 19, moisture has to be under 15', "fans ran all night, we're down to 13 percent"],
      ['moisture: fits: 13 %'],
    ],
    ['the limit said last', ['studs at 19 percent', 'has to be under 15'], ['moisture: does not fit: 19 %']],
    [
      'a floor against its subfloor, each by its latest reading',
      ['2-1/4 oak strip reads 8 percent, subfloor 13', 'subfloor 11 percent'],
      ['wood floor moisture: fits: 3 points'],
    ],
    [
      'planks of no width',
      ['hickory flooring reads 7 percent and 10 on the subfloor'],
      ['wood floor moisture: cannot say: how wide the boards are: 4 points under 3 in, else 2'],
    ],
  ])('moisture, %s', (_, texts, expected) => {
    expect(words(...texts)).toEqual(expected);
  });

  it('the latest measure of a kind in an area stands', () => {
    expect(words('risers are 8', 'redid the stair, risers are 7 and a half now')).toEqual([
      'riser height: fits: 7.5 in',
    ]);
  });

  it('says where the figure came from, and that others decide', () => {
    expect(told('the pump is on 12/2 with a 25 amp breaker')).toMatchObject([
      {
        limit: '20 A',
        source: 'NEC 240.4(D); local code and the licensed trade decide',
        noteId: 'n0',
        area: 'cabin',
        missing: null,
      },
    ]);
  });
});
