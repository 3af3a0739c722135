import { describe, expect, it } from 'vitest';
import { builtIn } from '../../server/takeoff/cautions/builtYear.ts';
import { HAZARDS } from '../../server/takeoff/cautions/hazards.ts';
import { layOut } from '../../server/takeoff/reading/layOut.ts';
import { played } from './told.ts';

const play = (builtYear: number | undefined, ...texts: string[]) =>
  played({
    id: 'c',
    rooms: ['hall'],
    builtYear,
    notes: texts.map((text, k) => ({ saidAt: `2026-06-09T1${k}:00:00`, text })),
    asOf: '2026-06-09T20:00:00',
  }).state;
const hazards = (builtYear: number | undefined, ...texts: string[]) =>
  play(builtYear, ...texts).cautions.map((c) => c.hazard);

describe('work that calls for a caution', () => {
  it.each<[string, string[], number?]>([
    ['need to swap the outlet by the back door', ['power off']],
    ['dimmer buzzes, replace it', ['power off']],
    ['gotta cut a channel in the slab for the floor drain', ['silica dust']],
    ['Chip out the loose brick on the hearth and reset it', ['silica dust']],
    ['scrape and repaint the porch ceiling, it is flaking', ['lead paint'], 1940],
    ['sand the stair railing down to wood', ['lead paint'], 1977],
    ['sand the stair railing down to wood', [], 1978],
    ['sand the stair railing down to wood', []],
    ['paint on the casing is all bubbled, that needs scraping and repainting', ['lead paint'], 1968],
    ['the sash has about ten coats of paint on it, strip it', ['lead paint']],
    ['found nine by nine tile with black mastic under the carpet', ['asbestos']],
    ['pulled up the old sheet vinyl already', ['asbestos']],
    ['gas valve on the range weeps, change it', ['gas']],
    ['toilet is pulled, drain is open till friday', ['sewer gas']],
    ['glue up the pvc drain under the sink tomorrow', ['solvent cement']],
    ['the joist under the tub is rotted, needs sistering', ['structure']],
    ['the beam in the cellar is sagging', ['structure']],
    ['mold behind the baseboard, maybe 2 feet of it', ['mould']],
    ['tub water is 131 degrees, turn it down', ['hot water']],
    ['fix the gutter over the garage, bring the long ladder', ['ladder']],
    ['gotta grind the old thinset off the slab tomorrow', ['silica dust']],
    ['drill twelve holes in the brick for the ledger', ['silica dust']],
    ['still have to cut the backer board for the shower', ['silica dust']],
    ['need to saw the pavers by the porch', ['silica dust']],
    ['scrape the window trim in the bedroom and prime it', ['lead paint'], 1950],
    ['replace the den windows, two of them', ['lead paint'], 1971],
    ['popcorn ceiling in the hall needs to come down', ['asbestos']],
    ['pull the old vermiculite out of the attic', ['asbestos']],
    ['need to rip up the nine inch floor tiles in the basement, black glue under', ['asbestos']],
    ['the outlet in the den sparks, swap it', ['power off']],
    ['add a breaker for the dryer', ['power off']],
    ['replace the light in the stairwell', ['power off']],
    ['smell gas by the stove in the kitchen', ['gas']],
    ['move the gas line for the range', ['gas']],
    ["toilet is off and the drain's open", ['sewer gas']],
    ['p trap on the floor drain is dry, stinks like sewer', ['sewer gas']],
    ['glue the pvc vent up in the attic', ['solvent cement']],
    ['cut the joist for the toilet drain', ['structure']],
    ["take out the wall between the kitchen and den, it's bearing", ['structure']],
    ['black mold on the back of the drywall in the bath', ['mould']],
    ['water heater is at 150, turn it down', ['hot water']],
    ["shower valve's running 135, needs the stop adjusted", ['hot water']],
  ])('%s: %j', (text, expected, builtYear) => {
    expect(hazards(builtYear, text)).toEqual(expected);
  });
});

describe('no caution where nothing calls for one', () => {
  it.each([
    'swapped the outlet by the back door, works fine',
    'need 2 outlet covers and a box of screws',
    'switch to the gray paint in the hall',
    'the access panel door sticks',
    'patch panel is punched and tested',
    'roofer comes thursday',
    'no mold back there, all dry',
    'need a box of roofing nails',
    'sand the new shelves and wipe them down',
    'cut the trim for the hall window',
    'beam of light through the blinds is nice',
    'lead time on the vanity is two weeks',
    'water heater is fine',
    'toilet seat is loose',
    'touch up the paint in the hall',
    'need a gallon of concrete sealer',
    'the concrete pad looks good',
    'bring the brick samples to the owner',
    "tile's set, grout tomorrow",
    'outlet cover is cracked in the hall',
    'gas station receipt is 42 bucks',
    'ladder is in the garage, grab it',
    "the mold line on the trim doesn't match",
    'cut the baseboard in the den',
    'drill pilot holes for the cabinet pulls',
    'hot water works fine now',
    'pvc trim board needs two more screws',
    'glue the trim in the hall',
    'hang the towel bar in the bath',
    'order two windows for the den',
    'power washer is broken, replace the hose',
    'switch the door swing in the bath',
    'the joists look great',
    'light coat of mud on the hall ceiling',
    'change the light bulb in the closet',
    'sand the drywall in the den',
    'drain the compressor',
    'lead carpenter comes monday',
    'i saw the tile at the yard, looks nice',
  ])('%s', (text) => {
    expect(hazards(1950, text)).toEqual([]);
  });
});

it('says each once, on the items that call for it and no other', () => {
  const state = play(
    undefined,
    'outlet by the door is dead, replace it. also patch the drywall by the window',
    'the dimmer hums, swap it',
  );
  expect(state.cautions.map((c) => c.hazard)).toEqual(['power off']);
  const named = state.items.filter((i) => state.cautions[0]!.items.includes(i.number)).map((i) => i.task);
  expect(named).toHaveLength(2);
  expect(named.join()).not.toMatch(/drywall/);
});

it('every hazard has plain words, a source, and defers to others', () => {
  for (const { text, source } of HAZARDS) {
    expect(text).toMatch(/Local code and the licensed trade decide\.$/);
    expect(source.length).toBeGreaterThan(8);
  }
  expect(new Set(HAZARDS.map((h) => h.hazard)).size).toBe(HAZARDS.length);
});

it.each([
  ['house was built in fifty seven', 1957],
  ['its a 1924 house', 1924],
  ['the place went up in nineteen sixty eight', 1968],
  ['eighteen ninety farmhouse', 1890],
  ['home is from the seventies', 1970],
  ['built in the 40s', 1940],
  ['building dates from 1985', 1985],
  ['need fifty seven feet of base in the house', null],
  ['paid 1950 for the lumber', null],
])('%s: %s', (text, year) => {
  const note = { noteId: 'n', saidAt: '2026-06-09T10:00:00', text, facts: [] };
  expect(builtIn(layOut([note], { areas: [], builtYear: null }))).toBe(year);
});
