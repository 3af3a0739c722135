import { describe, expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { at, END, told } from './days.ts';
import { done, followUp, JOB, material, note, problem } from './made.ts';

const open = (...texts: string[]) =>
  told(...texts)
    .items.filter((i) => i.state === 'open')
    .map((i) => i.task);
const states = (...entries: Entry[]) => fold(JOB, entries, END).items.map((i) => i.state);

describe('what closes an item', () => {
  it('a flaw put right that is told otherwise, where only one of that thing stands', () => {
    const hums = note('a', at(1), problem('disposal', 'hums', 'kitchen'));
    const freed = note(
      'b',
      at(2),
      problem('disposal', 'jammed', null, { state: 'fixed', quote: 'disposal was jammed, freed it' }),
    );
    expect(states(hums, freed)).toEqual(['done']);
    const other = note('c', at(1), problem('disposal', 'leaking', 'kitchen'));
    expect(states(hums, other, freed)).toEqual(['open', 'open', 'done']);
  });

  it('work on the flaw itself, where only one was told of as such', () => {
    const dip = note('a', at(1), problem('subfloor', 'dip', 'hall'));
    expect(states(dip, note('b', at(2), done('fill dip in hall', 'hall')))).toEqual(['done']);
    expect(states(dip, note('b', at(2), done('fill dip', 'kitchen')))).toEqual(['open', 'done']);
    expect(states(dip, note('b', at(2), done('measure dip', 'hall')))).toEqual(['open', 'done']);
  });

  it('the same work on the day that it was due', () => {
    const sand = note(
      'a',
      at(1),
      followUp('sand second coat', null, { due: at(2).slice(0, 10), quote: 'coat on the patch, sand it' }),
    );
    expect(states(sand, note('b', at(2), done('sand patch', null)))).toEqual(['done']);
    expect(states(sand, note('b', at(3), done('sand patch', null)))).toEqual(['open', 'done']);
  });

  it('how far it was done is no other thing', () => {
    const loose = note('a', at(1), problem('stoop railing', 'loose', null));
    expect(states(loose, note('b', at(2), done('drill railing out two inches', null)))).toEqual(['done']);
  });

  it('what came, and that it is up', () => {
    expect(open('hall blinds are broken', "the blinds came in, they're hung")).toEqual([]);
  });

  it('no leaks at one thing says nothing of another', () => {
    expect(open('kitchen faucet drips', 'gas line tested, no leaks at the trap')).toHaveLength(1);
    expect(open('kitchen faucet drips', 'tested it, no drips at the faucet')).toEqual([]);
  });

  it('the day on which it was done is no place', () => {
    expect(open('one walk slab is heaved by the root, we repour that slab', 'we poured the slab at ten')).toEqual([]);
  });

  it('what the owner leaves out is dropped', () => {
    expect(told('hall window latch is bent', 'leave the hall window latch out of it').items[0]).toMatchObject({
      state: 'dropped',
    });
  });

  it('what the owner scratches is dropped, though the note tells of other things', () => {
    const [gate] = told('hall gate is cracked', 'yeah scratch the gate, they will fence the yard instead').items;
    expect(gate).toMatchObject({ state: 'dropped' });
  });

  it('what came and was put on', () => {
    expect(open('hall blinds are broken', 'the blinds came in. put them up')).toEqual([]);
  });

  it('what waits on something is not on', () => {
    expect(open('hall outlet is loose', 'the hall outlet waits on the plate')).toHaveLength(1);
  });
});

describe('what is no item, or none of its own', () => {
  it.each([
    ['how a thing stands', 'New tank is set in the hall, level'],
    ['what is to be fetched', 'They were out of hinges, somebody has to run by the yard for it'],
    ['what a store lacks', 'no blinds that size on the shelf'],
    ['goods still to get', 'bottom tread is in, still need the other box of screws'],
    ['what another brings', 'he brings his own mud'],
    ['a flaw that does no harm', 'hall shutoff is stiff but it holds'],
    ['what others do', "they're checking the other yard and will call wednesday"],
  ])('%s', (_what, text) => {
    expect(open(text)).toEqual([]);
  });

  it('what a thing does, and why', () => {
    expect(open("hall window won't lock, the latch is bent")).toHaveLength(1);
    expect(open("hall window won't lock and the latch is bent")).toHaveLength(2);
  });

  it('a shutoff by the valve that came and went in, whenever in the day', () => {
    const seized = "the hall radiator shutoff is seized, won't turn at all";
    expect(open(seized, "stop valve showed up last night so I put it in first thing, water's on, no leak")).toEqual([]);
  });

  it('goods by a size in words, and goods named behind their count', () => {
    const order = (...texts: string[]) => told(...texts).order.map((l) => [l.quantity, l.unit, l.item]);
    expect(order('need one eight foot 2x8', 'got the two by eight')).toEqual([]);
    const text = 'one sheet of three quarter t and g plywood';
    const count = material('floor', 1, 'need', {
      unit: 'sheet',
      quote: 'one sheet of three quarter',
      start: 0,
      end: 26,
    });
    const name = material('plywood', null, 'need', { unit: null, quote: 'plywood', start: 35, end: 42 });
    const entry = note('a', at(1), count, name);
    const named = fold(JOB, [{ ...entry, what: { ...entry.what, text } as Entry['what'] }], END);
    expect(named.order.map((l) => [l.quantity, l.unit, l.item])).toEqual([['1', 'sheet', 'plywood']]);
  });
});
