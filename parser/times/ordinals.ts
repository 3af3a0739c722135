import type { Talk } from './talk.ts';

export interface Ordinal {
  day: number;
  until: number;
  digits: boolean;
}

const ORDINALS =
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(
    ' ',
  );

/** `14th`, `fourteenth`, `twenty first`: the number and where its words end. */
export function ordinalAt(talk: Talk, i: number): Ordinal | null {
  const word = talk.bare(i);
  // Dictation writes "the 22 nd"; "22 st" is a street.
  const ending = /^(?:st|nd|rd|th)$/.exec(talk.bare(i + 1))?.[0];
  if (/^\d{1,2}$/.test(word) && ending && (ending !== 'st' || !talk.tokens[i + 1]!.spaced))
    return within({ day: Number(word), until: i + 2, digits: true });
  if (word === 'twenty' || word === 'thirty') {
    const at = talk.word(i + 1) === '-' ? i + 2 : i + 1;
    const unit = ORDINALS.indexOf(talk.bare(at));
    if (unit >= 0 && unit < 9)
      return within({ day: (word === 'twenty' ? 20 : 30) + unit + 1, until: at + 1, digits: false });
  }
  if (word === 'thirtieth') return { day: 30, until: i + 1, digits: false };
  const at = ORDINALS.indexOf(word);
  return at >= 0 ? { day: at + 1, until: i + 1, digits: false } : null;
}

const within = <T extends { day: number }>(found: T) => (found.day >= 1 && found.day <= 31 ? found : null);
