import type { Heard, Token, Vocabulary } from '../types.ts';
import { COMMON } from './common.ts';
import { repair } from './repair.ts';
import { ROOM_NUMBER, SHORTHAND } from './shorthand.ts';
import { slipOf } from './slips.ts';
import { STARTS_NUMBER, takeBackAt } from './takeback.ts';
import { isTitle } from './titles.ts';
import { tokenise } from './tokens.ts';

const FILLERS = new Set(['uh', 'um', 'er', 'erm', 'hmm', 'mm', 'mhm', 'uhh', 'umm', 'eh', 'ah']);
const FILLER_PHRASES = [
  ['you', 'know'],
  ['i', 'mean'],
  ['kind', 'of'],
  ['sort', 'of'],
];

/**
 * The words as meant. The text is never rewritten: tokens keep their places, fillers and what was taken back are
 * marked to be stepped over, shorthand and mishearings carry the trade's spelling.
 */
export function hear(text: string, vocabulary: Vocabulary): Heard {
  const { tokens, repairs } = repair(tokenise(text), text, vocabulary);
  const heard = shorthand(tokens, text, vocabulary);
  spokenMarks(heard);
  fillers(heard);
  takeBackClauses(heard);
  return { text, tokens: heard, repairs };
}

function shorthand(tokens: readonly Token[], text: string, vocabulary: Vocabulary): Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    const count = countHeard(tokens, i);
    if (count) {
      out.push({ ...token, word: count });
      continue;
    }
    const room = ROOM_NUMBER.exec(token.word);
    if (room && token.kind === 'word') {
      out.push({ ...token, word: 'bedroom' }, { ...token, kind: 'word', word: room[1]!, spaced: true });
      continue;
    }
    // "R&R" says its two verbs in the places of its letters.
    if (token.word === 'r' && tokens[i + 1]?.text === '&' && tokens[i + 2]?.word === 'r') {
      out.push({ ...token, word: 'remove' }, { ...tokens[i + 1]!, kind: 'word', word: 'and' });
      out.push({ ...tokens[i + 2]!, word: 'replace' });
      i += 2;
      continue;
    }
    // "re-read", "re-tape": one verb with its hyphen.
    const [dash, again] = [tokens[i + 1], tokens[i + 2]];
    if (token.word === 're' && dash?.text === '-' && !dash.spaced && again?.kind === 'word' && !again.spaced) {
      out.push({ ...token, end: again.end, text: text.slice(token.start, again.end), word: `re${again.word}` });
      i += 2;
      continue;
    }
    // "w/" and "w/o" are one word with their slash.
    if (token.word === 'w' && tokens[i + 1]?.text === '/' && !tokens[i + 1]!.spaced) {
      const without = tokens[i + 2]?.word === 'o' && !tokens[i + 2]!.spaced;
      const last = tokens[i + (without ? 2 : 1)]!;
      out.push({
        ...token,
        end: last.end,
        text: text.slice(token.start, last.end),
        word: without ? 'without' : 'with',
      });
      i += without ? 2 : 1;
      continue;
    }
    const long =
      token.kind === 'word' &&
      (token.word.length > 1 || /^[wn]$/.test(token.text)) &&
      !touchesDigit(tokens, i) &&
      !isSet(tokens, i) &&
      !isTitle(tokens, i)
        ? (SHORTHAND.get(token.word) ?? needOrAnd(tokens, i) ?? slip(token.word, vocabulary))
        : undefined;
    if (!long) out.push(token);
    else for (const word of long.split(' ')) out.push({ ...token, word });
  }
  return out;
}

/** "nd 4 bags" asks at the head of what is said, and joins behind words. */
function needOrAnd(tokens: readonly Token[], i: number): string | undefined {
  if (tokens[i]!.word !== 'nd') return undefined;
  const before = tokens[i - 1];
  return !before || before.kind === 'break' || before.kind === 'mark' ? 'need' : 'and';
}

/** A typing slip, unless the trade has the very word. */
function slip(word: string, vocabulary: Vocabulary): string | undefined {
  const meant = slipOf(word) ?? withItsG(word, vocabulary);
  return meant && !vocabulary.has(word) ? meant : undefined;
}

/** "Moldin", "walkin": the g is dropped. */
function withItsG(word: string, vocabulary: Vocabulary): string | null {
  if (!/[a-z]{2}in$/.test(word) || COMMON.has(word)) return null;
  const whole = `${word}g`;
  return vocabulary.has(whole) || COMMON.has(whole) ? whole : null;
}

/** "To by fours", "for by four": dictation's spelling of a count that stands before "by". */
const countHeard = (tokens: readonly Token[], i: number) =>
  tokens[i + 1]?.word === 'by' &&
  /^(?:[2468]|10|12|two|four|six|eight|ten|twelve|twos|fours|sixes|eights|tens|twelves)$/.test(
    tokens[i + 2]?.word ?? '',
  )
    ? HOMOPHONES.get(tokens[i]!.word)
    : undefined;

const HOMOPHONES: ReadonlyMap<string, string> = new Map([
  ['to', 'two'],
  ['too', 'two'],
  ['for', 'four'],
  ['fore', 'four'],
  ['won', 'one'],
]);

/** "A gear kit", "two injection kits": goods, and no kitchen. */
const isSet = (tokens: readonly Token[], i: number) =>
  tokens[i]!.word === 'kit' &&
  tokens[i - 1]?.kind === 'word' &&
  !/^(?:in|the|for|to|at|from|of|into|and|on|by|over)$/.test(tokens[i - 1]!.word);

const touchesDigit = (tokens: readonly Token[], i: number) => !tokens[i]!.spaced && tokens[i - 1]?.kind === 'number';

/** "Comma", "period", "new line" spoken as marks: between words, where the word would mean nothing else. */
function spokenMarks(tokens: Token[]): void {
  tokens.forEach((token, i) => {
    const next = tokens[i + 1];
    if (token.word === 'comma' && next?.kind === 'word') Object.assign(token, { kind: 'mark', word: ',' });
    else if (
      (token.word === 'period' || (token.word === 'full' && next?.word === 'stop')) &&
      !/^(?:the|a|this|that|waiting|time|cure|curing|dry|of)$/.test(tokens[i - 1]?.word ?? '') &&
      next?.word !== 'of'
    ) {
      Object.assign(token, { kind: 'mark', word: '.' });
      if (token.text.toLowerCase() === 'full') next!.skip = 'spokenMark';
    } else if (token.word === 'question' && next?.word === 'mark') {
      Object.assign(token, { kind: 'mark', word: '?' });
      next.skip = 'spokenMark';
    } else if (
      token.word === 'new' &&
      /^(?:line|paragraph)$/.test(next?.word ?? '') &&
      !/^(?:a|the|in|run|ran|install|of|pull)$/.test(tokens[i - 1]?.word ?? '')
    ) {
      Object.assign(token, { kind: 'break', word: '\n' });
      next!.skip = 'spokenMark';
    }
  });
}

/** Hesitation, phrases that fill, and words said twice running, which are heard once. */
function fillers(tokens: Token[]): void {
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if ((FILLERS.has(token.word) && !isMillimetres(tokens, i) && !isAmpHours(tokens, i)) || isFillingLike(tokens, i))
      token.skip = 'filler';
    const phrase = FILLER_PHRASES.find((words) => words.every((w, k) => tokens[i + k]?.word === w));
    if (phrase && !MEANT_BEFORE[phrase[1]!]?.test(tokens[i - 1]?.word ?? ''))
      for (let k = 0; k < phrase.length; k++) tokens[i + k]!.skip ??= 'filler';
    if (token.skip) continue;
    if (isTwice(tokens, i, 1)) token.skip = 'repeat';
    else if (isTwice(tokens, i, 2)) {
      token.skip = 'repeat';
      tokens[i + 1]!.skip ??= 'repeat';
    }
  }
}

/** "Mm" is a hesitation, but millimetres behind a number, squared or not. */
const isMillimetres = (tokens: readonly Token[], i: number) => {
  const number = tokens[/^(?:sq|square)$/.test(tokens[i - 1]?.word ?? '') ? i - 2 : i - 1];
  return tokens[i]!.word === 'mm' && (number?.kind === 'number' || STARTS_NUMBER.test(number?.word ?? ''));
};

/** "Ah" is a sigh, but amp hours on or behind figures: `18Ah`, `7 Ah`. */
const isAmpHours = (tokens: readonly Token[], i: number) =>
  tokens[i]!.word === 'ah' && tokens[i - 1]?.kind === 'number' && (!tokens[i]!.spaced || tokens[i]!.text === 'Ah');

/** "Do you know", "what kind of grout": the same words, but meant. */
const MEANT_BEFORE: Readonly<Record<string, RegExp>> = {
  know: /^(?:do|if|let|so|did)$/,
  of: /^(?:a|the|what|this|that|some|any|which|every|each|one|two|new|same|other)$/,
};

/** "And like the door": only between a joint and the start of a new phrase, since "looks like" and "like new" mean it. */
const isFillingLike = (tokens: readonly Token[], i: number) =>
  tokens[i]!.word === 'like' &&
  /^(?:and|but|so|just|um|uh|,)$/.test(tokens[i - 1]?.word ?? '') &&
  /^(?:the|a|an|i|we|he|they|you|um|uh|,)$/.test(tokens[i + 1]?.word ?? '');

/** The same one or two words again at once ("the the", "in the in the"), and not said twice on purpose. */
function isTwice(tokens: readonly Token[], i: number, count: number): boolean {
  for (let k = 0; k < count; k++) {
    const [one, again] = [tokens[i + k], tokens[i + k + count]];
    if (one?.kind !== 'word' || again?.kind !== 'word' || one.word !== again.word) return false;
    if (DOUBLED.has(one.word) || one.start === again.start) return false;
  }
  return true;
}

/** Words that are said twice on purpose: "that that", "had had", numbers ("fifty fifty"), "no no". */
const DOUBLED = new Set(
  'that had very so really no fifty oh zero two one three four five six seven eight nine ten eleven twelve twenty thirty forty sixty bye'.split(
    ' ',
  ),
);

/** First words of the phrases that do: asking at every word would be half the cost of hearing. */
const TAKES_CLAUSE_BACK = new Set(
  'scratch scrap scrub cancel strike never nevermind forget delete disregard ignore'.split(' '),
);

/** In a run-on without marks no more than this many words are taken back. */
const LONGEST_CLAUSE = 16;

/** "Scratch that" takes back the clause before it, to the last mark or joint. */
function takeBackClauses(tokens: Token[]): void {
  for (let i = 1; i < tokens.length; i++) {
    if (!TAKES_CLAUSE_BACK.has(tokens[i]!.word)) continue;
    const back = takeBackAt(tokens, i);
    if (back?.scope !== 'clause') continue;
    let from = i - 1;
    while (from >= 0 && tokens[from]!.kind === 'mark' && from > i - 3) from--;
    while (
      from >= 0 &&
      from > i - LONGEST_CLAUSE &&
      tokens[from]!.kind !== 'break' &&
      tokens[from]!.skip !== 'takenBack' &&
      !(tokens[from]!.kind === 'mark' && /^[.;!?,]$/.test(tokens[from]!.text)) &&
      !/^(?:and|but|then|so|also)$/.test(tokens[from]!.word)
    )
      from--;
    for (let k = from + 1; k < back.until; k++) tokens[k]!.skip = 'takenBack';
    i = back.until;
  }
}
