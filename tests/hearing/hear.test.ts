import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hear } from '../../parser/hearing/index.ts';
import { builtIn, withTerms } from '../../parser/trade/index.ts';

const heardWords = (text: string) =>
  hear(text, builtIn())
    .tokens.filter((t) => !t.skip)
    .map((t) => (t.kind === 'break' ? '/' : t.word))
    .join(' ');

describe('the words as meant', () => {
  it.each([
    ['um pull the the toilet', 'pull the toilet'],
    ['in the in the hall', 'in the hall'],
    ['you know the sink leaks', 'the sink leaks'],
    ['do you know if it is dry', 'do you know if it is dry'],
    ['what kind of grout', 'what kind of grout'],
    ['and like the door sticks', 'and the door sticks'],
    ['it looks like the valve', 'it looks like the valve'],
    ['fifty fifty on that', 'fifty fifty on that'],
    ['set it comma then grout period', 'set it , then grout .'],
    ['the cure period is three days', 'the cure period is three days'],
    ['set the sink new line call the owner', 'set the sink / call the owner'],
    ['run a new line to the sink', 'run a new line to the sink'],
    ['fix the fan, scratch that, fix the light', 'fix the light'],
    ['paint the hall and fix the fan scratch that fix the light', 'paint the hall and fix the light'],
    ['get w/ 2 screws w/o caps', 'get with 2 screws without caps'],
    ['R&R the door', 'remove and replace the door'],
    ['paint BR2 and KIT clg', 'paint bedroom 2 and kitchen ceiling'],
    ['not b4 tues', 'not before tues'],
    ['the washer was walkin and the moldin is loose', 'the washer was walking and the molding is loose'],
    ['resin in the basin by the cabin', 'resin in the basin by the cabin'],
    ['grab to by fours and a for by four', 'grab two by fours and a four by four'],
  ])('%s', (text, want) => {
    expect(heardWords(text)).toBe(want);
  });
});

describe('a misheard word needs a neighbour of its trade', () => {
  it.each([
    ['one bag of grow for the tile', 'grow', 'grout'],
    ['a tube of white cock for the trim', 'cock', 'caulk'],
    ['wax rink for the toilet', 'wax rink', 'wax ring'],
    ['WAX RINK FOR THE TOILET', 'WAX RINK', 'wax ring'],
  ])('%s', (text, heard, meant) => {
    expect(hear(text, builtIn()).repairs).toMatchObject([{ heard, meant }]);
  });

  it.each([
    'the kids grow so fast',
    'we had tea with the owner',
    'he has a bad cough',
    'that was my first choice',
    'sat on the sofa all day',
    'in most cases he shows up',
    'then set the time for lunch',
    'call Wallace about it',
  ])('%s', (text) => {
    expect(hear(text, builtIn()).repairs).toEqual([]);
  });

  it("puts right the firm's own words too", () => {
    const own = withTerms(builtIn(), [
      { name: 'kerdeck', kind: 'material', counter: 'tile', misheard: ['cur deck'], soldBy: ['roll'] },
    ]);
    expect(hear('two rolls of cur deck', own).repairs).toMatchObject([{ heard: 'cur deck', meant: 'kerdeck' }]);
    expect(hear('two rolls of cur deck', builtIn()).repairs).toEqual([]);
  });
});

interface Misheard {
  text: string;
  heard: string;
  meant: string;
}
const squeezed = (text: string) => text.toLowerCase().replace(/[^a-z]/g, '');

it('puts right four in five of the misheard words', () => {
  const list = readFileSync(new URL('../../fixtures/hearing/seen.jsonl', import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Misheard);
  const right = list.filter(({ text, meant }) => squeezed(heardWords(text)).includes(squeezed(meant)));
  expect(right.length / list.length).toBeGreaterThanOrEqual(0.8);
});

const PIECES =
  'um uh the the you know like comma period new line scratch that fin set wax rink R & R w / o BR2 KIT pecks no wait , . \n ½'.split(
    ' ',
  );

it('keeps every token in its place in the text, whatever is said', () => {
  fc.assert(
    fc.property(fc.array(fc.oneof(fc.constantFrom(...PIECES), fc.string()), { maxLength: 30 }), (pieces) => {
      const text = pieces.join(' ');
      const { tokens, repairs, text: kept } = hear(text, builtIn());
      expect(kept).toBe(text);
      let last = 0;
      for (const token of tokens) {
        expect(token.start).toBeGreaterThanOrEqual(last);
        expect(token.end).toBeGreaterThan(token.start);
        expect(text.slice(token.start, token.end)).toBe(token.text);
        last = token.start;
      }
      for (const repair of repairs) expect(text.slice(repair.start, repair.end)).toBe(repair.heard);
    }),
    { numRuns: 500 },
  );
});
