/** General readers of numbers and units, each as a function from a text to what it reads there. */
import {
  recognizeDimension,
  recognizeNumber,
  recognizePercentage,
  recognizeTemperature,
} from '@microsoft/recognizers-text-suite';
import nlp from 'compromise/three';
import Qty from 'js-quantities';
import { numericQuantity } from 'numeric-quantity';
import * as spelled from 'words-to-numbers';
import { unitNamed } from '../../parser/quantities/units.ts';

export interface Reading {
  value: number;
  unit: string | null;
  start: number;
  end: number;
}

export type Reader = (text: string) => Reading[];

/** The unit that our table finds in the one or two words behind a number. */
function unitBehind(text: string, at: number): string | null {
  const words = text.slice(at).match(/^[\s-]*(?:of an? )?(["']|[a-z%]+)(?: ([a-z]+))?/i);
  if (!words) return null;
  const [one, pair] = [words[1]!.toLowerCase(), `${words[1]} ${words[2]}`.toLowerCase()];
  return (unitNamed(pair) ?? unitNamed(one))?.unit ?? null;
}

export const compromise: Reader = (text) =>
  (
    nlp(text).numbers().json({ offset: true }) as {
      offset: { start: number; length: number };
      number: { num: number | null };
    }[]
  )
    // It has numbers that are none ("11kV"), and they are NaN.
    .filter(({ number }) => Number.isFinite(number.num))
    .map(({ offset: { start, length }, number }) => {
      const unit = unitBehind(text, start + length);
      return { value: number.num!, unit, start, end: start + length };
    });

/** The longest windows of words that js-quantities takes for an amount. */
export const unitLibrary: Reader = (text) => {
  const words = [...text.matchAll(/\S+/g)];
  const readings: Reading[] = [];
  for (let i = 0; i < words.length; i++)
    for (let length = 3; length > 0; length--) {
      const part = words.slice(i, i + length);
      const said = part
        .map(([word]) => word)
        .join(' ')
        .replace(/[.,;]$/, '');
      const amount = part.length === length && /\d/.test(part[0]![0]) ? Qty.parse(said) : null;
      if (!amount) continue;
      const last = part.at(-1)!;
      const unit = unitNamed(amount.units())?.unit ?? null;
      readings.push({ value: amount.scalar, unit, start: part[0]!.index, end: last.index + last[0].length });
      i += length - 1;
      break;
    }
  return readings;
};

/** The recognizer suite: a number takes the unit of the dimension around it, else the one that our table finds behind it. */
export const recognizers: Reader = (text) => {
  const withUnit = [recognizeDimension, recognizeTemperature, recognizePercentage].flatMap((recognize) =>
    recognize(text, 'en-us'),
  );
  const taken = withUnit.filter(({ resolution }) => resolution?.value != null);
  const readings: Reading[] = taken.map(({ start, end, resolution }) => ({
    value: Number.parseFloat(String(resolution!.value)),
    unit: unitNamed(String(resolution!.unit ?? '%').toLowerCase())?.unit ?? null,
    start,
    end: end + 1,
  }));
  for (const { start, end, resolution } of recognizeNumber(text, 'en-us')) {
    if (taken.some((t) => t.start <= start && t.end >= end)) continue;
    const value = Number.parseFloat(String(resolution?.value));
    if (!Number.isNaN(value)) readings.push({ value, unit: unitBehind(text, end + 1), start, end: end + 1 });
  }
  return readings;
};

const NUMERAL = /\d[\d.,]*(?:[ -]\d+\/\d+|\/\d+|\s?[¼½¾⅛⅜⅝⅞])?|[¼½¾⅛⅜⅝⅞]/g;

/** Words to numbers, then numerals out of the text that comes back. Places are lost, so each reading counts anywhere. */
export const glue: Reader = (text) => {
  const converted = String(spelled.wordsToNumbers(text) ?? text);
  return [...converted.matchAll(NUMERAL)].flatMap((match) => {
    const value = Number(numericQuantity(match[0].replace(/(\d)-(?=\d+\/)/, '$1 ')));
    const unit = unitBehind(converted, match.index + match[0].length);
    return Number.isNaN(value) ? [] : [{ value, unit, start: 0, end: text.length }];
  });
};
