import { remembered } from '../../../parser/remembered.ts';
import { sentenceFrom } from '../meeting.ts';
import { NUMBER } from '../said/numbers.ts';

/** Words that say of goods that nobody has to buy them. */
interface Unwanted {
  /** The goods as they were named; a pronoun or a number where they were named before. */
  named: string;
  start: number;
  end: number;
  /** Where its sentence begins, and all that was said before that. */
  from: number;
  before: string;
}

const NAME = '([^.;!?,\\n]{1,40}?)';
const END =
  "(?=[.;!?,\\n]|$| (?:and|so|but|cause|because|then|anymore|any more|after all|now|that|i|we|he|she|they|hes|he's|with (?:him|her|them)|for us|over|by)\\b)";

const SAYS: readonly RegExp[] = [
  // "Don't get those", "no need to buy it", "scratch buying that".
  new RegExp(
    `\\b(?:(?:don't|dont|do not|no need to|needn't|scratch|skip|forget(?: about)?|never mind|stop|hold off on) (?:have to |need to )?|(?:didn't|didnt) (?:have to |need to ))(?:buy|get|order|pick up|grab|buying|getting|ordering|picking up) ${NAME}${END}`,
    'g',
  ),
  // "Leave the adhesive off the list", "cross that off what we buy".
  new RegExp(
    `\\b(?:leave|take|cross|knock|strike|scratch) ${NAME} off (?:of )?(?:the|our|what we) (?:list|order|shopping|buy)`,
    'g',
  ),
  new RegExp(`\\b(?:don't|dont|do not|won't|no longer) need (?:the|that|those|any|it|them)\\b ?${NAME}${END}`, 'g'),
  // "So no silicone", "form boards skip".
  new RegExp(
    `\\bso no (?:more )?${NAME}(?:(?: (?:needed|then|after all))?(?=[.;!?,\\n]|$)| (?:neither|either)\\b)`,
    'g',
  ),
  // "He says no gravel after all".
  new RegExp(`\\bno (?:more )?${NAME} after all\\b`, 'g'),
  // "He's bringing the front", "the turner is making the 4", "Kiki gets those herself".
  new RegExp(
    `\\b(?!(?:i|we|you|that|it|this|to|so|and|or|then|but|now|just|actually|please|let's|lets|no|ok|okay|oh|wait|sorry|well|also|better|can|could|should|must|will|gonna|not|don't|dont|maybe)\\b)[a-z]+(?:'s|'re|'ll| is| are| will|s)? (?:bring(?:s|ing)?|leav(?:e|es|ing)(?: us)?|mak(?:e|es|ing)|bend(?:s|ing)|suppl(?:y|ies|ying)|donat(?:e|es|ing)) ${NAME}${END}`,
    'g',
  ),
  new RegExp(`\\bgets? ${NAME} (?:her|him|them)sel(?:f|ves)\\b`, 'g'),
];

/** What stands before goods' name. */
export const LEADS = /^(?:(?:the|that|those|any|a|an|us|his|her|their|our|own|(?:box|gallon|bag|tube|roll|can) of) )+/;
/** "Don't need the 6 bolts": how many is no part of their name. */
export const COUNTED = new RegExp(`^(?:${NUMBER}) (?=[a-z])`);
/** Words that only point at goods named before. */
export const POINTS =
  /^(?:it|that|them|those|these|one|any|the (?:one|ones|\d+|two|three|four|five|six)|us one|one for us)$/;

/** Every place in a text, lower case, that says so. */
export const unwantedIn = remembered((said): Unwanted[] =>
  SAYS.flatMap((says) =>
    [...said.matchAll(says)].map(({ 0: whole, 1: named, index }) => {
      const from = sentenceFrom(said, index);
      return { named: named!.trim(), start: index, end: index + whole.length, from, before: said.slice(0, from) };
    }),
  ),
);
