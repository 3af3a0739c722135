import { expect, it } from 'vitest';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { builtIn, withTerms } from '../../parser/trade/index.ts';
import { bringFor, workIn } from '../../parser/trade/work.ts';

it.each([
  ['grout the shower floor', ['grout']],
  ['tape and mud the seams', ['tape', 'mud']],
  ['rehung the closet door', ['rehang']],
  ['touch up the trim', ['touch up', 'trim']],
  ['hooking up the dishwasher', ['hook up']],
  ['paint, then paint again', ['paint']],
  ['the weather', []],
])('%s', (task, work) => {
  expect(workIn(tokenise(task), builtIn()).map(({ name }) => name)).toEqual(work);
});

it('names what to bring once, in order of the work', () => {
  expect(bringFor(tokenise('caulk and silicone the tub'), builtIn())).toEqual([
    'caulk gun',
    'utility knife',
    'rags',
    "painter's tape",
  ]);
  expect(bringFor(tokenise('call the plumber'), builtIn())).toEqual([]);
});

it("a firm's own work brings its own tools", () => {
  const own = withTerms(builtIn(), [{ name: 'hot mop', kind: 'task', also: ['hot mopped'], bring: ['kettle', 'mop'] }]);
  expect(bringFor(tokenise('hot mopped the pan'), own)).toEqual(['kettle', 'mop']);
});
