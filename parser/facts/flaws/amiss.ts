import { type Chunk, isCopula, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, nounPhraseFrom, phrase, type Talk } from '../talk.ts';
import { type Flaw, isNegativeBefore, thingOf } from './flaw.ts';

/** Not as it has to be: out of true, too big, short, wrong, unlike what was asked for. */
export function amiss(talk: Talk, frame: Frame, at: number): Flaw | null {
  const said = frame.chunks.map((c) => c.word).join(' ');
  const found =
    outOfTrue(frame, said) ?? notSo(said) ?? shortBy(frame) ?? unlike(frame, said) ?? offSpec(talk, frame, at);
  if (found)
    return {
      thing: thingOf(talk, frame, at, startOf(frame, found)),
      defect: found,
      span: { start: frame.start, end: frame.end },
      rule: 'problem/amiss',
      confidence: 0.8,
    };
  return wrongOne(talk, frame, at, said);
}

/** Where in the clause the words of a flaw begin. */
function startOf({ chunks }: Frame, flaw: string): number {
  const first = flaw.split(' ')[0]!;
  const k = chunks.findIndex((c) => c.word === first || c.word.startsWith(`${first} `) || c.word === flaw);
  return k < 0 ? chunks.length : k;
}

function outOfTrue(frame: Frame, said: string): string | null {
  if (frame.negative) return null;
  const outOf = /\bout of (?:level|plumb|square|round|whack|true|line|spec)\b/.exec(said);
  return outOf ? outOf[0] : outBy(frame);
}

/** "Out almost half an inch": but "out of three eighths lags" has run short, and "came out twelve wide" only measures. */
function outBy({ chunks, subject, verbAt }: Frame): string | null {
  if (verbAt < 0 || isPerson(subject)) return null;
  const k = chunks.findIndex(
    (c, i) =>
      c.word === 'out' &&
      chunks[i + 1]?.word !== 'of' &&
      !/^(?:come|comes|came|measured?|works?|worked|figured)$/.test(chunks[i - 1]?.word ?? '') &&
      chunks.slice(i + 1, i + 3).some((n) => n.quantity?.unitKind === 'length'),
  );
  return k < 0 ? null : phrase(chunks.slice(k, k + 3));
}

const TOO =
  /\btoo (?:big|small|long|short|wide|narrow|tall|high|low|tight|loose|thick|thin|hot|cold|wet|deep|shallow|close|far|dark|light|heavy|warm|weak|soft|slow|fast|steep|flat|stiff|rough|bright|loud)\b(?! to (?:paint|pour|work|grout|lay|set|caulk|seal|stain|roof))/;
const NOT_SO =
  /\b(?:not|isn't|ain't|aren't|wasn't|no) (?:level|plumb|square|flush|straight|even|right|working|centered|centred|grounded|secured?|tight|up to code|to code|sealed|getting|lining up|closing|draining|holding|latching|turning|reaching|seating|sitting right|running|firing|painted|equal|caulked|grouted|trimmed|heating|cooling|charging|opening|fastened|anchored|supported|attached|bonded|vented|flashed|insulated|nailed|glued|strapped|blocked|rated|straight|parallel|aligned|stuck)\b/;

const NEVER = /\bnever (?:got|was|were|been) [a-z]+(?:ed|en|t)\b/;

/** "Too big", "isn't fastened": said of the thing. */
const notSo = (said: string): string | null => (TOO.exec(said) ?? NOT_SO.exec(said) ?? NEVER.exec(said))?.[0] ?? null;

/** "Four inches short", "short by 5/8", "off 3/16", "came up a quarter inch high": but "60 inches off the floor" is where it is. */
function shortBy({ chunks, predicate }: Frame): string | null {
  for (const [k, c] of chunks.entries()) {
    if (c.kind !== 'word' && c.kind !== 'term') continue;
    const before = chunks[k - 1]?.quantity?.unitKind === 'length' ? chunks[k - 1]! : null;
    const next = chunks[k + 1]?.word === 'by' ? chunks[k + 2] : chunks[k + 1];
    const after = next?.quantity?.unitKind === 'length' && !isNounTerm(chunks[chunks.indexOf(next) + 1]) ? next : null;
    const place = /^(?:the|of|on|each|from|a|my)$/.test(chunks[k + 1]?.word ?? '');
    const isSaid = predicate === 'copula' || chunks.slice(0, k).some(isNounTerm);
    if (before && /^(?:short|shy|low|proud|over|tight)$/.test(c.word) && isSaid && !(place && c.word === 'over'))
      return phrase(chunks.slice(k - 1, k + 1));
    // "Reads three high".
    if (/^(?:high|low|off)$/.test(c.word) && chunks[k - 1]?.quantity && /^reads?$/.test(chunks[k - 2]?.word ?? ''))
      return phrase(chunks.slice(k - 1, k + 1));
    if (before && c.word === 'off' && !place && isSaid) return phrase(chunks.slice(k - 1, k + 1));
    if (
      before &&
      c.word === 'high' &&
      chunks.slice(0, k).some((b) => /^(?:up|proud|in)$/.test(b.word) && isCopula(chunks[chunks.indexOf(b) - 1]))
    )
      return phrase(chunks.slice(k - 1, k + 1));
    if (
      after &&
      /^(?:short|off|shy|low)$/.test(c.word) &&
      isSaid &&
      (isCopula(chunks[k - 1]) || chunks[k + 1]?.word === 'by')
    )
      return phrase(chunks.slice(k, chunks.indexOf(after) + 1));
  }
  return null;
}

/** "Hangs an inch lower than the other two", "doesn't match", "sounds like a truck", "in the way". */
function unlike(frame: Frame, said: string): string | null {
  if (isPerson(frame.subject) || /^(?:imperative|owed)$/.test(frame.predicate)) return null;
  return (
    /\b(?:lower|higher|taller|deeper|bigger|smaller|longer|shorter|wider|narrower|darker|lighter|thicker|thinner) than (?:the|all|its|what)\b|\b(?:jumps?|jumped|off) (?:the|its) track\b|\boff track\b|\bsounds? like a\b|\b(?:in|blocking) the way\b|\bcame back\b(?! to)|\bpulls? (?:away|off|out)\b|\b(?:pulled|popped|came|fell|broke|worked|torn) (?:out of|away|loose|apart)\b|\b(?:isn't|aren't|ain't|wasn't|not) (?!going|coming|being|gonna|leaking|dripping|doing|having|saying|worth|looking|needing|waiting|happening|missing|anything|nothing|during)[a-z]{3,}ing\b|\bnever (?:kicks?|comes?|turns?|shuts?|drains?|lights?|latche?s?|closes?|stops?)\b|\bsticks? out\b|\bpast (?:its )?date\b/.exec(
      said,
    )?.[0] ?? null
  );
}

const ASKED =
  /\b(?:supposed to|ought to be|should be|should have|has to be|have to be|needs? to be|must be|spec|specs|print|prints|drawing|drawings|plan|plans|sheet|code|manual|instructions|rated|calls? for|called for|wants?|allows?|required|requires|min|minimum|max|maximum|others?)\b/;

/** "Only ten inches, the drawing shows twelve": a size found, and then another that was asked for. */
function offSpec(talk: Talk, frame: Frame, at: number): string | null {
  const found = sizeIn(frame);
  const named = frame.chunks
    .slice(
      0,
      frame.chunks.findIndex((c) => c.quantity === found),
    )
    .some(isNounTerm);
  if (!found?.unitKind || !named || ASKED.test(words(frame)) || /^(?:imperative|owed|modal)$/.test(frame.predicate))
    return null;
  for (const later of talk.frames.slice(at + 1, at + 3)) {
    if (later.sentence > frame.sentence + 1 || /^(?:imperative)$/.test(later.predicate)) return null;
    const asked = sizeIn(later);
    if (!asked) continue;
    if (
      !ASKED.test(words(later)) ||
      (asked.unitKind ?? found.unitKind) !== found.unitKind ||
      asked.value.equals(found.value)
    )
      return null;
    if (later.subject.some(isNounTerm) && !ASKED.test(later.subject.map((c) => c.word).join(' '))) return null;
    return `${found.quote}, ${later.chunks.map((c) => c.word).join(' ')}`;
  }
  return null;
}

const words = (frame: Frame) => frame.chunks.map((c) => c.word).join(' ');
const sizeIn = (frame: Frame) =>
  frame.chunks.find((c) => c.quantity && !/^(?:count|pack|time)$/.test(c.quantity.unitKind ?? ''))?.quantity;

/** "They sent the wrong valve", "the hot was on the wrong terminal". */
function wrongOne(talk: Talk, frame: Frame, at: number, said: string): Flaw | null {
  const { chunks } = frame;
  const wrong = chunks.findIndex((c) => c.word === 'wrong');
  if (wrong < 0 || isNegativeBefore(chunks, wrong) || /nothing wrong/.test(said)) return null;
  const noun: Chunk[] = chunks.slice(wrong + 1, nounPhraseFrom(chunks, wrong + 1));
  const subject = thingOf(talk, frame, at);
  return {
    thing: subject.length && !isPerson(frame.subject) && frame.subject.length ? subject : noun.length ? noun : subject,
    defect: phrase(chunks.slice(wrong, wrong + 1 + noun.length)),
    span: { start: frame.start, end: frame.end },
    rule: 'problem/wrong',
    confidence: 0.75,
  };
}
