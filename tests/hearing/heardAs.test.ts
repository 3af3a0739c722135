import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COMMON } from '../../parser/hearing/common.ts';
import { hear } from '../../parser/hearing/index.ts';
import { builtIn } from '../../parser/trade/index.ts';

const repairsOf = (text: string) => hear(text, builtIn()).repairs;
const wordsOf = (text: string): string[] => text.toLowerCase().match(/[a-z']+/g) ?? [];

describe('names heard as other words', () => {
  it.each([
    ['the toilet flandge is cracked', 'toilet flandge', 'toilet flange'],
    ['suffet over the porch needs blocking', 'suffet', 'soffit'],
    ['the bath fan ducked is crushed in the attic', 'ducked', 'duct'],
    ['six ballusters for the deck rail', 'ballusters', 'balusters'],
    ['put a new angle stomp under the powder room sink', 'angle stomp', 'angle stop'],
    ['a filter and a belt on the air handle her', 'air handle her', 'air handler'],
    ['get a new sump pomp', 'sump pomp', 'sump pump'],
    ['hurricane dies on every rafter', 'hurricane dies', 'hurricane ties'],
    ['the sheep rock seams need mud', 'sheep rock', 'sheetrock'],
    ['nail the bass boards in the hall', 'bass boards', 'baseboards'],
    ['two tubes of sealer cone', 'sealer cone', 'silicone'],
    ['sodder the joint on the copper line', 'sodder', 'solder'],
    ['the over flow play is missing a screw on the tub', 'over flow play', 'overflow plate'],
    ['two rolls of you eff cable', 'you eff cable', 'uf cable'],
  ])('%s', (text, heard, meant) => {
    expect(repairsOf(text)).toMatchObject([{ heard, meant }]);
  });

  it.each([
    'level her out on the slab',
    "the forms weren't braced",
    'Kabul has its own light',
    'a big screen over the vanity',
    'one box of one and a quarter screws',
    'the front doorway is dark',
    'paint the wall behind the sink',
    'call me fri am about the frame',
    'vengo el lunes con las cajas de tile',
    "the tub's out and the cover's off",
    'the hall light is dead',
    'caulk in the corner and tape the joint',
    'the door binds at the top',
    'the crawl space was densely packed with insulation',
    'the garage door opener works, the window opens too',
    'there was a mullet in the water by the pipe',
    'epoxied the anchor in the tile and degreased the pan',
    'porcelain in the hall, mitred at the corner',
    'notched the joist at midspan',
    'Stall door hinge is cracked',
    'the floor refinisher is out on Wednesday',
    'one sheet of zinc on the roof',
    'a tube of P L for the sill',
    'found out the hard way that the sill is short',
    'white specks all over the vanity',
    'I want the slab at two before I bond the tile',
    'the drain re pitched and the gasket new',
  ])('leaves "%s" as it is', (text) => {
    expect(repairsOf(text)).toEqual([]);
  });
});

const ENGLISH: string[] = [...COMMON];
const SOUNDS = 'flandge joyst pecks sillycone bawl board bored sump pomp her ducked seems pan all you eff fawcet'.split(
  ' ',
);
const TRADE = 'drywall pipe tile breaker hinge toilet valve screws mortar two boxes of the a and'.split(' ');

it('puts no word right without one that supports it', () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.constantFrom(...SOUNDS), fc.constantFrom(...TRADE), fc.constantFrom(...ENGLISH)), {
        maxLength: 14,
      }),
      (words) => {
        const text = words.join(' ');
        for (const { start, end, heard, meant, because } of repairsOf(text)) {
          const around = wordsOf(`${text.slice(0, start)} ${text.slice(end)}`);
          const inBoth = wordsOf(heard).includes(because) && meant.split(/[ -]/).includes(because);
          expect(inBoth || around.includes(because) || because.includes("'")).toBe(true);
        }
      },
    ),
    { numRuns: 500 },
  );
});

it('puts no word right that stands alone', () => {
  fc.assert(
    fc.property(fc.oneof(fc.constantFrom(...SOUNDS), fc.stringMatching(/^[a-z]{1,12}$/)), (word) => {
      expect(repairsOf(word)).toEqual([]);
    }),
    { numRuns: 1000 },
  );
});
