import { describe, expect, it } from 'vitest';
import { questionsIn } from '../../parser/facts/questions.ts';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const asked = (text: string) => questionsIn(text).map(({ question, about }) => [question, about]);

describe('questions to the list', () => {
  it.each([
    'What do I need from the store?',
    'what am i picking up',
    'what do i need to get for mon',
    'whats on the list to buy',
    'anything to pick up',
    'what am I still short of',
    'what should I grab on the way in',
    'is there anything else to buy before tomorrow',
    'do I need anything from the store',
    "ok so what's left to buy",
    'what are we getting at the yard today',
    'what all do we still need',
    'what am I picking up tomorrow morning',
    'what do I need monday morning',
  ])('ask for the order: %s', (text) => {
    expect(asked(text).map(([question]) => question)).toEqual(['order']);
  });

  it.each([
    ["What's left before I go home?", null],
    ['whats left on the deck', 'deck'],
    ['what do I still have to do in the kitchen today', 'kitchen'],
    ['anything left in the hall', 'hall'],
    ['what have I got left to do', null],
    ["so what's on the list for tomorrow", null],
    ['what else is there to do', null],
  ])('ask for what is open: %s', (text, about) => {
    expect(asked(text)).toEqual([['left', about]]);
  });

  it.each([
    ['How many sticks of baseboard did I say we need?', 'sticks of baseboard'],
    ["what's that shelf measure again", 'shelf'],
    ["what's the width of the hall opening", 'hall opening'],
    ['how wide is the niche', 'niche'],
    ['did I ever call the flooring guy', 'call the flooring guy'],
    ['is the hatch done yet', 'hatch'],
    ['when is Sal coming', 'sal'],
    ["who's doing the gutter", 'gutter'],
    ['where are we with the stairs', 'stairs'],
    ['did we get that hasp or is it still on the list', 'that hasp'],
    ['how many more double boxes is Imran short', 'double boxes'],
    ['did anybody ever call the surveyor about those stairs', 'call the surveyor'],
    ['who have I got coming on Tuesday', 'tuesday'],
    ["who's here tomorrow", 'tomorrow'],
    ["He's asking can he take the sander to the barn door while it's quiet.", 'barn door'],
    ['can we drill the garage ceiling this afternoon', 'garage ceiling'],
  ])('ask for all that is told of one thing: %s', (text, about) => {
    expect(asked(text)).toEqual([['told', about]]);
  });

  it('stand two in a sentence', () => {
    expect(asked("What's left in the kitchen, and what do I need to buy")).toEqual([
      ['left', 'kitchen'],
      ['order', null],
    ]);
  });

  it('name a room, a shop of its own or the work, and no shop or day at large', () => {
    expect(asked('what do we need for the deck')).toEqual([['order', 'deck']]);
    expect(asked('what do I need from the lumber yard')).toEqual([['order', 'lumber yard']]);
    expect(asked('what do I need from the hardware store')).toEqual([['order', null]]);
    expect(asked('what do I need to get for the weekend')).toEqual([['order', null]]);
  });

  it.each([
    "don't know what's left to do up there",
    'ask her how many outlets she wants',
    'let me know when the paint is dry',
    'when the glue is dry sand it',
    'Have I mentioned the sill is rotten',
    "paint what's left in the kitchen",
    'gotta figure out what I need from the store',
    'ask Dave what he needs from the yard',
    'what I need is a plumber',
    'treated what was left, just needs a coat',
    "see if there's anything to pick up",
    'need to get anything to hold it up',
  ])('are no clauses inside others: %s', (text) => {
    expect(asked(text)).toEqual([]);
  });

  it.each([
    'hall walls are painted. painting the kitchen mon with Tom. what do i need to get for mon',
    'hall walls are painted, painting the kitchen mon with Tom what do i need to get for mon',
    "hall walls are painted. I'll hook up the dryer vent Monday. What's left before I go home?",
  ])('end a longer note, and are neither work nor goods: %s', (text) => {
    const { facts } = readNote(text, { saidAt: SAID_AT, areas: ['hall', 'kitchen'] });
    const question = facts.find((f) => f.kind === 'command')!;
    expect(question.quote.toLowerCase()).toMatch(/^what/);
    expect(facts.some((f) => f.kind === 'done')).toBe(true);
    expect(facts.filter((f) => f !== question && f.end > question.start)).toEqual([]);
  });
});
