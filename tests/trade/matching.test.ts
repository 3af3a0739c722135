import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hear } from '../../parser/hearing/index.ts';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { builtIn, terms, withTerms } from '../../parser/trade/index.ts';
import { mentionsIn } from '../../parser/trade/mentions.ts';
import { vocabularyOf } from '../../parser/trade/vocabulary.ts';
import { singular } from '../../parser/trade/words.ts';
import type { Token } from '../../parser/types.ts';

const found = (text: string, vocabulary = builtIn()) =>
  mentionsIn(tokenise(text), text, vocabulary).map(({ term, quote }) => [quote, term.name]);

describe('a term is found', () => {
  it.each([
    ['grab the wax ring', 'wax ring', 'wax ring'],
    ['THINSET', 'THINSET', 'thinset'],
    ['thin set', 'thin set', 'thinset'],
    ['thin-set', 'thin-set', 'thinset'],
    ['p trap', 'p trap', 'p-trap'],
    ['ptraps', 'ptraps', 'p-trap'],
    ['dry wall', 'dry wall', 'drywall'],
    ['dry wall screws', 'dry wall screws', 'drywall screw'],
    ['base board', 'base board', 'baseboard'],
    ['wall papers', 'wall papers', 'wallpaper'],
    ['plumbers putty', 'plumbers putty', "plumber's putty"],
    ['plumber’s putty', 'plumber’s putty', "plumber's putty"],
    ["the toilet's", "toilet's", 'toilet'],
    ['two switches', 'switches', 'switch'],
    ['all the shelves', 'shelves', 'shelf'],
    ['six 2x4s', '2x4s', '2x4'],
    ['two by fours', 'two by fours', '2x4'],
    ['14/2', '14/2', 'cable'],
    ['skirting', 'skirting', 'baseboard'],
    ['plasterboard', 'plasterboard', 'drywall'],
    ['architrave', 'architrave', 'casing'],
    ['una caja de clavos', 'clavos', 'nail'],
    ['it doesnt latch', 'doesnt latch', "won't latch"],
    ["it doesn't latch", "doesn't latch", "won't latch"],
    ['tile guys', 'tile guys', 'tile guy'],
  ])('%s', (text, quote, name) => {
    expect(found(text)).toContainEqual([quote, name]);
  });

  it('by its longest name, each word once', () => {
    expect(found('closet flange bolts and a closet bolt for the toilet flange')).toEqual([
      ['closet flange', 'closet flange'],
      ['bolts', 'bolt'],
      ['closet bolt', 'closet bolt'],
      ['toilet flange', 'closet flange'],
    ]);
  });

  it('over fillers and repeats', () => {
    const { tokens } = hear('the toilet uh flange', builtIn());
    expect(mentionsIn(tokens, 'the toilet uh flange', builtIn())).toMatchObject([{ quote: 'toilet uh flange' }]);
  });
});

it.each([
  'can you call them about the weather',
  'on that course of action we need an addition to it',
  'take down and run over there',
  'the types of it',
  "we'll ask him",
  'of course we lost it',
])('everyday talk holds no trade word: %s', (text) => {
  expect(found(text)).toEqual([]);
});

it.each([
  ['hinges', 'hinge'],
  ['boxes', 'box'],
  ['switches', 'switch'],
  ['niches', 'niche'],
  ['sizes', 'size'],
  ['trusses', 'truss'],
  ['cameras', 'camera'],
  ['assemblies', 'assembly'],
  ['ties', 'tie'],
  ['knives', 'knife'],
  ['teeth', 'tooth'],
  ['90s', '90'],
  ['valves', 'valve'],
  ['glass', 'glass'],
  ['gas', 'gas'],
  ['chassis', 'chassis'],
])('%s is the plural of %s', (plural, one) => {
  expect(singular(plural)).toBe(one);
});

describe("a firm's own words", () => {
  const own = withTerms(builtIn(), [
    { name: 'bluefin board', kind: 'material', counter: 'tile', soldBy: ['sheet'] },
    { name: 'station', kind: 'area' },
    { name: 'house mud', kind: 'material', counter: 'drywall', also: ['hot mud'], soldBy: ['bag'] },
  ]);

  it('are found beside the built-in ones and win over them', () => {
    expect(found('bluefin-board and hot mud and grout in the station', own)).toEqual([
      ['bluefin-board', 'bluefin board'],
      ['hot mud', 'house mud'],
      ['grout', 'grout'],
      ['station', 'station'],
    ]);
  });

  it('leave the built-in vocabulary as it was', () => {
    expect(found('bluefin and hot mud')).toEqual([['hot mud', 'setting compound']]);
  });
});

it('finds the same whatever the order of the terms', () => {
  const turned = vocabularyOf(terms().reverse());
  for (const term of terms()) {
    const tokens = tokenise(term.name);
    expect(turned.match(tokens, 0)?.term.name).toBe(builtIn().match(tokens, 0)?.term.name);
  }
});

describe('any text', () => {
  const talk = fc.array(
    fc.oneof(fc.constantFrom('two', 'by', 'four', 'dry', 'wall', '-', "'s", 'wax', 'ring', '12/2', 'uh'), fc.string()),
  );

  it('gives mentions in order, inside the text, none overlapping', () => {
    fc.assert(
      fc.property(talk, (pieces) => {
        const text = pieces.join(' ');
        let last = 0;
        for (const { start, end, quote } of mentionsIn(tokenise(text), text, builtIn())) {
          expect(start).toBeGreaterThanOrEqual(last);
          expect(quote).toBe(text.slice(start, end));
          expect(quote).not.toBe('');
          last = end;
        }
      }),
    );
  });

  it.each(['two by ', 'wax uh ', 'dry-', 'closet flange repair '])('is read once: %s over and over', (piece) => {
    const looks = (times: number) => {
      let count = 0;
      const tokens: Token[] = tokenise(piece.repeat(times)).map((t) =>
        t.word === 'uh' ? { ...t, skip: 'filler' } : t,
      );
      const watched = new Proxy(tokens, {
        get: (target, key) => {
          count++;
          return Reflect.get(target, key);
        },
      });
      mentionsIn(watched, '', builtIn());
      return count;
    };
    expect(looks(2000)).toBeLessThan(2.2 * looks(1000));
  });
});
