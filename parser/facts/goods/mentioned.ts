import { type Chunk, isDeterminer, isModal, isNounTerm, isPreposition, isSubjectPronoun } from '../chunks.ts';
import { isPerson, isSize, type Talk } from '../talk.ts';
import { isNegative } from '../words.ts';
import { NOT_GOODS } from './words.ts';

/** Words of the talk that a lot may mean. */
export interface Phrase {
  chunks: Chunk[];
  at: number;
  from: number;
  until: number;
  /** It stands in a verb: "foamed it with one can". */
  done?: boolean;
}

/** Every noun phrase of a talk that may name goods, in order. */
export function phrasesOf(talk: Talk): Phrase[] {
  return talk.frames.flatMap((frame, at) => phrasesIn(frame.chunks, at));
}

function phrasesIn(chunks: readonly Chunk[], at: number): Phrase[] {
  const out: Phrase[] = [];
  for (let k = 0; k < chunks.length; k++) {
    const goods = chunks[k]!.verb && GOODS_IN_VERB.get(chunks[k]!.verb!.lemma);
    if (goods)
      out.push({
        chunks: [{ ...chunks[k]!, kind: 'word', word: goods, verb: undefined }],
        at,
        from: k,
        until: k + 1,
        done: true,
      });
    if (isVerbHere(chunks, k)) continue;
    let end = k;
    while (
      end < chunks.length &&
      (describes(chunks[end]!) || isSize(chunks[end]!)) &&
      !(end > k && (isVerbHere(chunks, end) || chunks[end - 1]!.owner !== undefined))
    )
      end++;
    let last = end;
    while (last > k && chunks[last - 1]!.kind === 'quantity') last--;
    const phrase = chunks.slice(k, last);
    const head = phrase.at(-1);
    if (head && (isNounTerm(head) ? head.term!.kind !== 'role' : head.term?.kind === 'finish' || isOpenName(head)))
      out.push({ chunks: phrase, at, from: k, until: last });
    k = Math.max(k, end - 1);
  }
  return out;
}

/** Work that tells what it is done with: "foamed it with one can". */
const GOODS_IN_VERB: ReadonlyMap<string, string> = new Map(
  Object.entries({
    foam: 'foam',
    caulk: 'caulk',
    recaulk: 'caulk',
    grout: 'grout',
    regrout: 'grout',
    paint: 'paint',
    repaint: 'paint',
    prime: 'primer',
    stain: 'stain',
    glue: 'glue',
    tape: 'tape',
    insulate: 'insulation',
    tile: 'tile',
    mud: 'mud',
    patch: 'patch',
    silicone: 'silicone',
    seal: 'sealer',
    epoxy: 'epoxy',
    varnish: 'varnish',
  }),
);

const isOpenName = (c: Chunk) =>
  c.kind === 'word' && c.word.length > 2 && !NOT_GOODS.test(c.word) && !/(?:ly|ing)$/.test(c.word);

/** "Then I can grout": a trade word that is the verb there. */
const isVerbHere = (chunks: readonly Chunk[], j: number) =>
  chunks[j]!.verb !== undefined &&
  (isModal(chunks[j - 1]) || chunks[j - 1]?.word === 'to' || isPerson(chunks.slice(Math.max(0, j - 1), j)));

/** Words that describe the goods behind them. */
const describes = (c: Chunk) =>
  (isNounTerm(c) && c.term!.kind !== 'role') ||
  (c.kind === 'term' && c.term!.kind === 'finish') ||
  (c.kind === 'word' &&
    !c.verb &&
    !isModal(c) &&
    /^[a-z]{2,}/.test(c.word) &&
    !isPreposition(c) &&
    !isSubjectPronoun(c) &&
    !isDeterminer(c) &&
    !isNegative(c.word) &&
    !/^(?:and|or|but|is|are|was|were|has|have|had|need|more|any|then|so|also|just|about|got|new|old|left|of|we|used|one|ones|them|me|us|him|her|em|too|not|now|here|there|please|ok|okay|yeah|yep|yup|nope|oh|uh|um|though|tho|since|instead|until|till|til|than|hers|his|yours|mine|theirs|says|say|said|hey|hi|well|anyway|anyhow|almost|every|each|cause|cuz|either|neither|when|while|where|which|who|if|it's|that's|there's)$/.test(
      c.word,
    ));
