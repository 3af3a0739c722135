import type { Heard, Token, Vocabulary } from '../types.ts';
import { repair } from './repair.ts';
import { ROOM_NUMBER, SHORTHAND } from './shorthand.ts';
import { takeBackAt } from './takeback.ts';
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
  const heard = shorthand(tokens, text);
  spokenMarks(heard);
  fillers(heard);
  takeBackClauses(heard);
  return { text, tokens: heard, repairs };
}

function shorthand(tokens: readonly Token[], text: string): Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    const room = ROOM_NUMBER.exec(token.word);
    if (room && token.kind === 'word') {
      out.push({ ...token, word: 'bedroom' }, { ...token, kind: 'word', word: room[1]!, spaced: true });
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
      token.kind === 'word' && (token.word.length > 1 || /^[wn]$/.test(token.word)) && !touchesDigit(tokens, i)
        ? SHORTHAND[token.word]
        : undefined;
    if (!long) out.push(token);
    else for (const word of long.split(' ')) out.push({ ...token, word });
  }
  return out;
}

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

function fillers(tokens: Token[]): void {
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (FILLERS.has(token.word)) token.skip = 'filler';
    const phrase = FILLER_PHRASES.find((words) => words.every((w, k) => tokens[i + k]?.word === w));
    if (
      phrase &&
      !(phrase[0] === 'you' && /^(?:do|if|let|so)$/.test(tokens[i - 1]?.word ?? '')) &&
      !(phrase[1] === 'of' && /^(?:a|the|what|this|that|some|any)$/.test(tokens[i - 1]?.word ?? ''))
    )
      for (let k = 0; k < phrase.length; k++) tokens[i + k]!.skip ??= 'filler';
    const next = tokens[i + 1];
    if (
      next &&
      token.kind === 'word' &&
      next.kind === 'word' &&
      token.word === next.word &&
      !token.skip &&
      !DOUBLED.has(token.word) &&
      token.start !== next.start
    )
      token.skip = 'repeat';
  }
}
/** Words that are said twice on purpose: "that that", "had had", numbers ("fifty fifty"), "no no". */
const DOUBLED = new Set(
  'that had very so really no fifty two one three four five six seven eight nine ten twenty bye'.split(' '),
);

/** "Scratch that" takes back the clause before it, to the last mark or joint. */
function takeBackClauses(tokens: Token[]): void {
  for (let i = 1; i < tokens.length; i++) {
    const back = takeBackAt(tokens, i);
    if (back?.scope !== 'clause') continue;
    let from = i - 1;
    while (from >= 0 && tokens[from]!.kind === 'mark' && from > i - 3) from--;
    while (
      from >= 0 &&
      tokens[from]!.kind !== 'break' &&
      !(tokens[from]!.kind === 'mark' && /^[.;!?,]$/.test(tokens[from]!.text)) &&
      !/^(?:and|but|then|so|also)$/.test(tokens[from]!.word)
    )
      from--;
    for (let k = from + 1; k < back.until; k++) tokens[k]!.skip = 'takenBack';
    i = back.until;
  }
}
