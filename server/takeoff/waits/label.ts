import { type Figure, type Said, saying } from '../reading/said.ts';

const LABEL_TIME = saying(
  '\\b(?:says?|label|bag|tub|can|tin|tube|pail|packet|bottle|bucket|box|wants?|needs?|gotta|has to)\\b[^.{]{0,24}{T(\\d+)}|\\b(?:leav(?:e|ing?)|giv(?:e|ing?)|let(?:ting?)?) (?:it|that|them|the [a-z]+)(?: (?:dry|sit|set|cure|at least))* {T(\\d+)}|{T(\\d+)} (?:sitting |in the room |in there )*before',
);
/** "Giving it one more full day", "let it sit another 24 hours": from now on, whatever the label said. */
const LONGER = saying(
  '\\b(?:giv(?:e|ing?)|gave|let(?:ting)?|leav(?:e|ing)) (?:it|that|them|this|the [a-z]+)(?: (?:sit|dry|set|cure))* (?:another (?:<T>|(?:full |whole )?(day|night))|<T>|<N> more (?:full |whole )?(day)s?\\b)',
);
const HOURS: Readonly<Record<string, number>> = { hr: 1, day: 24, week: 168, min: 1 / 60 };
/** Null where the unit is none of time. */
const hoursOf = ({ value, unit }: Figure): number | null => value.valueOf() * (HOURS[unit ?? ''] ?? 0) || null;

/** "24 hours at 70 F, double that below 60": degrees F. */
const DOUBLED = saying(
  "\\b(?:double|twice)(?: (?:that|it|the time|as long))?,? (?:below|under|if (?:it's )?(?:below|under)) <DNX>",
);

export function doubledIn(said: Said): number | null {
  const match = DOUBLED.exec(said.words);
  return match ? said.figures[Number(match[1])]!.value.valueOf() : null;
}

/** Hours more that something is given, from when the note was told; null where it is not. */
export function longerHours(said: Said): number | null {
  const match = LONGER.exec(said.words);
  if (!match) return null;
  const [, another, word, more, days, day] = match;
  if (word) return word === 'day' ? 24 : 12;
  if (day) return said.figures[Number(days)]!.value.valueOf() * 24;
  const figure = said.figures[Number(another ?? more)]!;
  if (!another && !/\bmore\b/i.test(figure.quote)) return null;
  return hoursOf(figure);
}

/** Hours that a label asks for; null where none was said. */
export function labelHours(said: Said): number | null {
  const match = LABEL_TIME.exec(said.words);
  const figure = match && said.figures[Number(match[1] ?? match[2] ?? match[3])];
  return figure ? hoursOf(figure) : null;
}
