import { type Chunk, isGoods } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isPointer, phrase } from '../talk.ts';
import { BUYS, cutAtTime, IDLE, isPurchase, meant, type Plan, personIn, resolve, type Told } from './told.ts';

export function owedPlan(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks, verbAt } = frame;
  const verb = chunks[verbAt]?.verb;
  if (!verb || isWaitOnly(frame)) return null;
  const coat = coatNeeded(chunks);
  if (coat) {
    const under = isPointer(frame.subject) ? meant(talk, at) : phrase(frame.subject);
    return { task: `${coat} ${under}`.trim(), who: null, confidence: 0.65 };
  }
  if (frame.use === 'need' || verb.lemma === 'want' || verb.lemma === 'need') return needsPlan(talk, frame, at);
  if (BUYS.test(verb.lemma) && isPurchase(frame)) return null;
  if (IDLE.has(verb.lemma) && !/^(go|come|take|tell|stop)$/.test(verb.lemma)) return null;
  if (
    /^(?:dry|cure|set|sit|acclimate|harden|cool|run|hold)$/.test(verb.lemma) &&
    (!isPerson(frame.subject) || /^(?:it|they)\b/.test(chunks[0]!.word)) &&
    !verb.forms.has('participle')
  )
    return null;
  if (/\bhad to\b|\bwould have to\b|'d have to\b/.test(chunks.map((c) => c.word).join(' '))) return null;
  if (verb.lemma === 'go' && frame.rest[0]?.word === 'back')
    return {
      task: `send back ${isPointer(frame.subject) ? meant(talk, at) : phrase(frame.subject)}`,
      who: null,
      confidence: 0.75,
    };
  const who = personIn(frame.subject);
  const passive = verb.forms.has('participle') && !isPerson(frame.subject) && frame.subject.length > 0;
  const rest = cutAtTime(resolve(talk, frame.rest, at));
  if (passive || (frame.subject.length && !isPerson(frame.subject))) {
    const vague =
      isPointer(frame.subject) ||
      /\b(?:pieces?|one|ones|both|all of them)\b/.test(frame.subject.map((c) => c.word).join(' '));
    const thing = vague ? meant(talk, at) || phrase(frame.subject) : phrase(frame.subject);
    return { task: `${verb.lemma} ${thing} ${phrase(rest)}`.trim(), who: null, confidence: 0.8 };
  }
  return { task: `${verb.lemma} ${phrase(rest) || meant(talk, at)}`.trim(), who, confidence: 0.8 };
}

/** "Two of them still need ends", "the sill needs paint", "he wants photos by friday". */
export function needsPlan(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks, verbAt } = frame;
  const object = chunks.slice(verbAt + 1);
  const ing = object.findIndex((c) => c.verb?.forms.has('ing'));
  const thing = isPointer(frame.subject) ? meant(talk, at) : phrase(frame.subject);
  const asked = toldTo(talk, frame, at);
  if (asked) return asked;
  if (ing >= 0 && ing <= 1)
    return thing
      ? {
          task: `${object[ing]!.verb!.lemma} ${thing} ${phrase(cutAtTime(object.slice(ing + 1)))}`.trim(),
          who: null,
          confidence: 0.8,
        }
      : null;
  if (isPerson(frame.subject) || frame.subject.length === 0) {
    const role = personIn(frame.subject);
    if (role && chunks[verbAt]!.verb!.lemma === 'want' && object.length && !object.some(isGoods))
      return { task: `${phrase(cutAtTime(object))} for ${role}`, who: null, confidence: 0.6 };
    return null;
  }
  // "Needs one more pass", "another coat".
  const deed = object.find((c) =>
    /^(?:pass|coat|wipe|cleaning|look|touch-up|wash|sanding|rinse|skim|round)$/.test(c.word),
  );
  if (deed && thing) return { task: `${deed.word} ${thing}`, who: null, confidence: 0.65 };
  if (!object.length || object.some((c) => c.quantity || isGoods(c))) return null;
  return thing
    ? { task: `${phrase(cutAtTime(resolve(talk, object, at)))} ${thing}`, who: null, confidence: 0.6 }
    : null;
}

/** "Mud needs overnight", "thinset needs 24 hours", "mud's gotta sit the weekend": a wait, and nothing to do. */
export function isWaitOnly({ lemma, chunks, verbAt, subject }: Frame): boolean {
  const rest = chunks.slice(verbAt + 1);
  const waits = lemma === 'need' || (/^(?:sit|dry|cure|rest|harden)$/.test(lemma ?? '') && !isPerson(subject));
  return waits && subject.length > 0 && rest.some((c) => c.time) && rest.every((c) => c.time || WAITING.test(c.word));
}

const WAITING =
  /^(?:at|least|about|a|the|for|good|full|another|to|dry|cure|set|sit|up|till|til|until|over|skin|harden|off)$/;

/** "Another coat", "a second coat": which coat is to come; null where none is. */
function coatNeeded(chunks: readonly Chunk[]): string | null {
  const said = chunks.map((c) => c.word).join(' ');
  const which =
    /\b(?:needs?|wants?) (?:(?:a|the|one|its|at least) )*(another|more|second|third|final|finish|last|top|2nd|3rd) coats?\b/.exec(
      said,
    )?.[1];
  if (!which) return null;
  return `${{ more: 'another', '2nd': 'second', '3rd': 'third' }[which] ?? which} coat`;
}

/** "Flooring sub to reglue by friday", "needs the roofer to look at it", "plumber's coming thursday to look": somebody, "to", and the work. */
export function toldTo(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks } = frame;
  const to = chunks.findIndex((c, k) => c.word === 'to' && chunks[k + 1]?.verb?.forms.has('base'));
  const trade =
    to === 1 &&
    /^(?:hvac|electrical|plumbing|framing|roofing|drywall|painting|tile|flooring|sparky|sub|gc|ec|pc)$/.test(
      chunks[0]!.word,
    );
  const who = trade ? chunks[0] : to > 0 ? chunks.slice(0, to).findLast((c) => c.term?.kind === 'role') : undefined;
  if (!who) return null;
  const near = to - chunks.indexOf(who);
  const coming = chunks.slice(0, to).some((c) => /^(?:coming|comes|be here|here)$/.test(c.word));
  if (near > 1 && !coming) return null;
  const verb = chunks[to + 1]!.verb!;
  if (IDLE.has(verb.lemma) || frame.negative) return null;
  const object = phrase(cutAtTime(resolve(talk, chunks.slice(to + 2), at)));
  return {
    task: `${verb.lemma} ${object || meant(talk, at)}`.trim(),
    who: who.word.replace(/'s$/, ''),
    confidence: 0.75,
  };
}

/** "There's a cold joint at the drain that has to be ground": owed in a clause of its own. */
export function owedInside(frame: Frame): Plan | null {
  const k = frame.chunks.findIndex(
    (c, i) => c.word === 'that' && /^(?:has|have|needs|gotta)$/.test(frame.chunks[i + 1]?.word ?? ''),
  );
  const verb =
    k < 0 ? -1 : frame.chunks.findIndex((c, i) => i > k + 1 && c.verb && c.verb.lemma !== 'be' && c.word !== 'to');
  const thing =
    k < 0
      ? ''
      : phrase(
          frame.chunks.slice(0, k).filter((c) => !c.quantity && !/^(?:there's|there|is|long|wide|deep)$/.test(c.word)),
        );
  return verb > 0 && thing ? { task: `${frame.chunks[verb]!.verb!.lemma} ${thing}`, who: null, confidence: 0.7 } : null;
}
