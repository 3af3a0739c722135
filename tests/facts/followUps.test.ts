import { describe, expect, it } from 'vitest';
import { followUpsIn } from './read.ts';

const planned = (text: string) =>
  followUpsIn(text).map(({ task, who, due, notBefore }) => ({ task, who, due, notBefore }));

describe('a clause with a day still to come', () => {
  it.each([
    ['Countertop guys template on the 21st', 'template', '2026-05-21'],
    ["tomorrow I'm back to set the toilet", 'set toilet', '2026-05-13'],
    ['Tile goes in monday', 'install tile', '2026-05-18'],
    ['quarter round goes on monday', 'install quarter round', '2026-05-18'],
    ["Paving thursday if it's dry", 'pave', '2026-05-14'],
    ['tyler is gonna wrap the garage side monday', 'wrap garage side', '2026-05-18'],
    ["she's calling the city by friday", 'call the city', '2026-05-15'],
  ])('%s', (text, task, due) => {
    const [plan] = planned(text);
    expect(plan?.task).toBe(task);
    expect(plan?.due).toBe(due);
  });

  it.each(['boards land wednesday', "it's supposed to rain thursday", "I'm off friday", 'the ball game is thursday'])(
    "%s: nobody's work",
    (text) => expect(planned(text)).toEqual([]),
  );
});

describe('work asked for', () => {
  it.each([
    ["don't forget to shut the water off before you leave", 'shut water off'],
    ['could you check whether the tile is in stock', 'check whether tile is in stock'],
    ['I want to double check the slope', 'check slope'],
    ['be sure and lock the trailer', 'lock trailer'],
    ['only thing left is caulking the tub', 'caulk tub'],
    ['that piece of trim will have to be replaced', 'replace'],
    ["somebody's gotta call the gas company", 'call gas company'],
    ['tell dave the porta john is full', 'tell dave porta john is full'],
    ['- caulk tub', 'caulk tub'],
    ['- paint back wall', 'paint back wall'],
  ])('%s', (text, task) => {
    expect(planned(text)[0]?.task).toContain(task);
  });

  it('says whose work it is', () => {
    expect(planned('gonna have the plumber swap both valves')[0]).toMatchObject({ who: 'plumber' });
    expect(planned('HVAC to look at the drip pan')[0]).toMatchObject({ task: 'look at drip pan', who: 'hvac' });
  });

  it('waits where it is told to', () => {
    expect(planned('the tub has to sit full of water 24 hours before we caulk')[0]).toMatchObject({
      task: 'caulk tub',
      notBefore: '2026-05-13',
    });
    expect(planned('let it dry overnight then sand')[0]).toMatchObject({ notBefore: '2026-05-13' });
  });

  it('sends back what goes back', () => {
    expect(planned('they sent the wrong hinges so those are going back').map((p) => p.task)).toEqual([
      'send back hinges',
    ]);
  });
});

describe('what "it" is', () => {
  it.each([
    ["There's a spur for the towel rail, trace it tomorrow", 'trace towel rail spur'],
    ['used two bags of thinset on the hall floor, the threshold is loose, reset it monday', 'reset threshold'],
  ])('%s', (text, task) => {
    expect(
      planned(text)
        .map((p) => p.task)
        .join(' | '),
    ).toContain(task);
  });
});

describe('nothing to do', () => {
  it.each([
    'had to fur the wall out',
    "it's been a long one, see you in the morning",
    'call it eighteen even',
    'the water would have to run uphill',
  ])('%s', (text) => expect(planned(text)).toEqual([]));
});
