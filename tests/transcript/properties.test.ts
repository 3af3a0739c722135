import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';

const saidAt = '2026-03-04T09:00:00';
const PIECES = [
  'WEBVTT',
  '\n',
  '\n\n',
  '\r\n',
  '1',
  '00:01.000 --> 00:02.000',
  '00:00:03,000 --> 00:00:02,000',
  '--> ',
  '[0:05] ',
  '[1:02:03] ',
  '<v Ann>',
  '<v.',
  '<',
  '</b>',
  '&amp;',
  '&#0;',
  '&#xD800;',
  '- ',
  'Ann: ',
  ' ',
  'need six bags of plaster',
  'no wait make that five',
  'the wall is cracked',
  'three by four feet',
  'tomorrow',
  'in the kitchen',
  '{\\an8}',
];

describe('any text at all', () => {
  it.each([
    ['pieces of transcripts', fc.array(fc.constantFrom(...PIECES), { maxLength: 40 }).map((p) => p.join(''))],
    [
      'WebVTT of anything',
      fc.string({ unit: 'binary', maxLength: 80 }).map((s) => `WEBVTT\n\n00:01.000 --> 00:02.000\n${s}`),
    ],
    ['lines of anything', fc.string({ unit: 'binary', maxLength: 80 }).map((s) => `[0:01] ${s}`)],
  ])('%s: nothing throws, and every reading quotes the file', (_name, texts) => {
    fc.assert(
      fc.property(texts, (text) => {
        const { facts, quantities, times, terms, heard, clauses } = readNote(text, { saidAt });
        for (const one of [...facts, ...quantities, ...times, ...terms]) {
          expect(one.start).toBeGreaterThanOrEqual(0);
          expect(one.end).toBeLessThanOrEqual(text.length);
          expect(one.end).toBeGreaterThan(one.start);
          expect(one.quote).toBe(text.slice(one.start, one.end));
        }
        for (const one of [...heard.tokens, ...clauses]) {
          expect(one.start).toBeGreaterThanOrEqual(0);
          expect(one.end).toBeGreaterThanOrEqual(one.start);
          expect(one.end).toBeLessThanOrEqual(text.length);
        }
        for (const q of quantities) {
          expect(heard.tokens[q.from]!.start).toBe(q.start);
          expect(q.until).toBeLessThanOrEqual(heard.tokens.length);
        }
      }),
      { numRuns: 500 },
    );
  });
});
