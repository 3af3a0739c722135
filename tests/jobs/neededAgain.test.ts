import { describe, expect, it } from 'vitest';
import { told } from './days.ts';

const order = (...texts: string[]) => told(...texts).order.map((l) => [l.quantity, l.unit, l.item].join(' '));

describe('one need in other words', () => {
  it.each([
    ['need two sinks', "it's just the one sink we need", ['1 each sink']],
    ['need three knobs', 'only need one knob in the kitchen', ['1 each knob']],
    ['need nine cabinet knobs', 'it was ten cabinet knobs not nine', ['10 each cabinet knob']],
    ['order six pendants', 'cancel two of the pendants', ['4 each pendant']],
    ['need six hinges', 'two fewer hinges', ['4 each hinge']],
    ['need four smoke alarms', "we don't need four smoke alarms, two is plenty", ['2 each smoke alarm']],
    ['need three sheets of ply', 'get three sheets of plywood', ['3 sheet ply']],
    ['need six two by fours', 'still need six 2x4s', ['6 each 2x4']],
  ])('%s; %s', (first, then, lines) => expect(order(first, then)).toEqual(lines));

  it('short and so many more is told twice', () =>
    expect(order('a box of tile short on this floor. so one more box of tile')).toEqual(['1 box tile']));

  it('for two places in one breath adds up', () =>
    expect(order('need three knobs for the kitchen and two knobs for the hall')).toEqual(['5 each knob']));

  it('what the job takes is wanted, and no list of what was fetched', () =>
    expect(order('got one tube of adhesive in the truck, job takes three so grab two')).toEqual(['2 tube adhesive']));
});

describe('goods by their colour alone', () => {
  it.each([
    ['grab me a quart of the grey for the hall doors', ['1 qt grey']],
    ['hall wall is scuffed, need a quart of the grey', ['1 qt grey']],
    ['I need four of the brown ones', ['4 each brown']],
  ])('%s', (text, lines) => expect(order(text)).toEqual(lines));

  it('go by the thing that was spoken of', () =>
    expect(order('outlet covers are cracked in the hall, five of the white and two of the black please')).toEqual([
      '5 each white outlet cover',
      '2 each black outlet cover',
    ]));
});
