import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Fact, readNote } from '../../parser/index.ts';
import { merged } from '../../parser/transcript/merge.ts';

const saidAt = '2026-03-04T09:00:00';
const read = (text: string): Fact[] => readNote(text, { saidAt }).facts;
const goods = (text: string) =>
  read(text).flatMap((f) => (f.kind === 'material' ? [[f.item, f.quantity, f.unit, f.status]] : []));
const vtt = (...cues: [at: string, until: string, said: string][]) =>
  `WEBVTT\n\n${cues.map(([at, until, said]) => `${at}.000 --> ${until}.000\n${said}\n`).join('\n')}`;

describe('half an hour in a chapel, three people, tea and weddings', () => {
  const text = readFileSync('fixtures/transcripts/chapel.vtt', 'utf8');
  const facts = read(text);

  it('gives a list that a person would have written: no flood, in order, each with its second and its words', () => {
    expect(facts.length).toBeGreaterThan(15);
    expect(facts.length).toBeLessThan(32);
    for (const fact of facts) {
      expect(fact.quote).toBe(text.slice(fact.start, fact.end));
      expect(fact.at).toBeGreaterThan(130);
      expect(fact.at).toBeLessThan(1700);
      expect(fact.speaker).toMatch(/^(?:Bronagh|Idris|Mrs Kell)$/);
    }
    expect(facts.map((f) => f.start)).toEqual(facts.map((f) => f.start).sort((a, b) => a - b));
  });

  it('leaves out the tea, the wedding, the match and the ferries', () => {
    const said = facts.map((f) => JSON.stringify(f)).join('\n');
    expect(said).not.toMatch(/biscuit|wedding|band|match|cereal|ferr|kettle|photograph|bun/i);
  });

  it('keeps flaws, goods, sizes and what is to be done', () => {
    expect(goods(text)).toEqual(
      expect.arrayContaining([
        ['lime putty', 4, 'tub', 'have'],
        ['lime putty', 8, 'tub', 'need'],
        ['hair plaster', 5, 'bag', 'used'],
      ]),
    );
    const problems = facts.flatMap((f) => (f.kind === 'problem' ? [f.thing] : []));
    expect(problems).toEqual(expect.arrayContaining(['back corner', 'north wall', 'skirting', 'door frame']));
    const tasks = facts.flatMap((f) => (f.kind === 'followUp' ? [f.task] : []));
    expect(tasks).toEqual(expect.arrayContaining(['fix valley', 'call roofer', 'rehang door']));
  });

  it('writes once what is said twice', () => {
    const calls = facts.filter((f) => f.kind === 'followUp' && /roofer/.test(f.task));
    expect(calls).toHaveLength(1);
    expect(goods(text).filter(([item, , , status]) => item === 'lime putty' && status === 'need')).toHaveLength(1);
  });
});

describe('talk out of cues', () => {
  it('reads a sentence across cues, and quotes the file as it stands', () => {
    const text = vtt(['00:01', '00:03', 'we need six bags of'], ['00:03', '00:05', 'finish plaster']);
    expect(goods(text)).toEqual([['finish plaster', 6, 'bag', 'need']]);
    const [fact] = read(text);
    expect([fact!.at, fact!.quote]).toEqual([1, text.slice(fact!.start, fact!.end)]);
  });

  it('does not join across a pause or another speaker, but across a nod', () => {
    expect(goods(vtt(['00:01', '00:03', 'we need six bags of'], ['01:00', '01:02', 'plaster']))).not.toEqual([
      ['plaster', 6, 'bag', 'need'],
    ]);
    const nod = vtt(
      ['00:01', '00:03', '<v A>we need six bags of'],
      ['00:03', '00:04', '<v B>yeah, okay'],
      ['00:04', '00:05', '<v A>plaster'],
    );
    expect(goods(nod)).toEqual([['plaster', 6, 'bag', 'need']]);
  });

  it('asks where two counts of the same goods disagree, and takes a later total for the right one', () => {
    const [two, ...more] = read('[0:01] we need six bags of plaster\n[5:00] we need eight bags of plaster');
    expect(more).toEqual([]);
    expect(two).toMatchObject({ quantity: 8, at: 300 });
    expect(two!.confidence).toBeLessThan(0.5);
    expect(two!.ask).toBe('6 or 8 of plaster?');
  });

  it('adds goods that are said to be more', () => {
    const [six] = read('we need six bags of plaster');
    const [two] = read('we need two bags of plaster');
    const more = { ...two!, start: 900, end: 930, counts: 'more' } as Fact;
    expect(merged([six!, more])).toEqual([six, more]);
  });

  it('takes a job off the list that is done later, and a flaw that is fixed', () => {
    const facts = read('[0:01] we need to rehang the door\n[9:00] I rehung the door');
    expect(facts.map((f) => f.kind)).toEqual(['done']);
  });

  it('gives nothing for questions to the list: people talk to one another', () => {
    expect(read("[0:01] what's left in the kitchen\n[0:05] scratch that")).toEqual([]);
  });

  it('carries the area on for two minutes, not through a break for tea', () => {
    const areas = read(
      '[0:01] in the kitchen the ceiling is cracked\n[0:30] the door is out of plumb\n[30:00] the skirting is rotten',
    ).map((f) => f.area);
    expect(areas).toEqual(['kitchen', 'kitchen', null]);
  });
});

describe('long recordings', () => {
  it('reads twice as long a file in about twice the steps', () => {
    const count = (cues: number) => {
      let steps = 0;
      const text = vtt(
        ...Array.from({ length: cues }, (_, k): [string, string, string] => [
          `${String(Math.floor(k / 6)).padStart(2, '0')}:${String((k % 6) * 10).padStart(2, '0')}`,
          `${String(Math.floor(k / 6)).padStart(2, '0')}:${String((k % 6) * 10 + 9).padStart(2, '0')}`,
          `replace tile ${k} and buy ${k + 2} bags of grout`,
        ]),
      );
      const wordClass = () => {
        steps++;
        return null;
      };
      readNote(text.replaceAll('replace', 'hack the wall and replace'), { saidAt, wordClass });
      return steps;
    };
    const [once, twice] = [count(100), count(200)];
    expect(once).toBeGreaterThan(0);
    expect(twice).toBeLessThanOrEqual(2.2 * once);
  });
});
