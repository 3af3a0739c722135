import { type Chunk, isCopula, isModal, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPointer, phrase } from '../talk.ts';
import { isSmall } from '../words.ts';
import { conditionOf } from './dates.ts';
import { cutAtTime, IDLE, meant, type Plan, personIn, resolve, type Told } from './told.ts';

/** "Sand and prime is monday": the work stands where a thing would. */
export function datedSubject(talk: Told, frame: Frame, at: number): Plan | null {
  const [head] = frame.subject;
  if (
    frame.predicate !== 'copula' ||
    !head?.verb?.forms.has('base') ||
    !frame.rest.length ||
    !frame.rest.every((c) => c.time && !c.time.past)
  )
    return null;
  const before = talk.frames[at - 1];
  const joined =
    frame.joinedBy === 'and' && before?.chunks.length === 1 && before.chunks[0]!.verb
      ? `${before.chunks[0]!.verb.lemma} and `
      : '';
  const object = phrase(frame.subject.slice(1)) || meant(talk, at);
  return { task: `${joined}${head.verb.lemma} ${object}`.trim(), who: null, confidence: 0.7 };
}

/** A plan with no verb: "2nd coat wed", "texture thurs", "paint fri (painter)". */
export function datedEntry(talk: Told, frame: Frame, at: number): Plan | null {
  // "Dry till tomorrow" is a state of the work, not work.
  if (
    /^(?:dry|drying|wet|cure|curing|set|setting|closed|off|home|back)$/.test(frame.chunks[0]!.word) &&
    frame.chunks[0]!.kind === 'word'
  )
    return null;
  // "Boards land wednesday", "shingles show up": goods on their way are nobody's work.
  if (
    frame.chunks.some((c) =>
      /^(?:show|shows|land|lands|arrive|arrives|come|comes|deliver|delivers|here|due|eta|no)$/.test(c.word),
    )
  )
    return null;
  const time = frame.chunks.find((c) => c.time && !c.time.past && c.time.hours === undefined);
  if (
    frame.predicate !== 'none' ||
    !time ||
    frame.chunks.length > 7 ||
    frame.chunks.some((c) => c.term?.kind === 'defect' || c.quantity)
  )
    return null;
  const work = cutAtTime(frame.chunks).filter((c) => c.kind === 'term' || c.kind === 'word');
  const named =
    work.some((c) => isNounTerm(c) && c.term!.kind !== 'area' && c.term!.kind !== 'role') ||
    work.some((c) => c.verb?.forms.has('base') || c.verb?.forms.has('ing') || c.term?.kind === 'work');
  const doing = frame.chunks[0]!.verb?.forms.has('ing') ? frame.chunks[0]! : undefined;
  const task = phrase(
    work
      .map((c) => (c === doing ? { ...c, word: c.verb!.lemma } : c))
      .filter((c) => c.term?.kind !== 'role' && !/^(?:by|on|for|due)$/.test(c.word)),
  );
  if (!named || !task) return null;
  // "Grouting friday": the work by itself, done to what was last spoken of.
  const alone = !task.includes(' ');
  const verb = alone && (doing ?? work.find((c) => c.verb?.forms.has('base') && !isNounTerm(c)));
  const said = verb ? `${verb.verb!.lemma} ${meant(talk, at)}`.trim() : alone ? `do ${task}` : task;
  return { task: said, who: personIn(frame.chunks), confidence: 0.6 };
}

/** Weather, goods on their way, who is away, what is told of the day itself: dated, and nobody's work. */
const NO_WORK =
  /\b(?:rains?|raining|rainy|snow|freezes?|weather|closed|closes|opens?|(?:is|are|be|i'm|he's|she's|that's|it's|day|they're) (?:off|away|out|dry|hot|cold|good)|vacation|holiday|land|lands|arrives?|arriving|delivers?|delivered|delivery|ships?|shipping|shows? up|due|eta|backordered|thanks?|see you|birthday|game|dries|cures?|call it|meet|party|lunch|beer|push|bump|slide)\b|^(?:dry|cure|set)\b/;
const GOES = /^(?:go|come|be|start|begin|happen)$/;

/**
 * A clause with a day still to come tells of work, whatever its grammar: "tyler is gonna wrap the garage side monday",
 * "counter guy templates tuesday", "back tuesday to check the defrost", "quarter round goes on monday".
 */
export function datedPlan(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks } = frame;
  const day = chunks.find((c) => c.time && !c.time.past && c.time.hours === undefined);
  const trailing = chunks.findIndex((c, k) => k > 0 && /^(?:if|once|when|unless|after|before)$/.test(c.word));
  const said = (trailing > 0 ? chunks.slice(0, trailing) : chunks).map((c) => c.word).join(' ');
  if (!day || frame.negative || NO_WORK.test(said) || /^(?:if|when|once|unless|before|after)\b/.test(said)) return null;
  const booked = /\b(?:scheduled|booked|slated|set|lined up|on the calendar) (?:for|on)\b/.test(said);
  if (
    (/^(?:past|imperative|owed)$/.test(frame.predicate) && !booked) ||
    frame.use === 'buy' ||
    chunks.some((c) => c.term?.kind === 'defect')
  )
    return null;
  const who = personIn(chunks.slice(0, Math.max(frame.verbAt, 1) + 1));
  const body = cutAtTime(chunks).filter((c) => c.kind !== 'mark' && c.word.replace(/'s$/, '') !== who);
  const to = body.findIndex((c, k) => c.word === 'to' && body[k + 1]?.verb?.forms.has('base'));
  const verbAt = to >= 0 ? to + 1 : body.findIndex((c) => doesWork(c));
  const verb = body[verbAt]?.verb;
  if (verb && !(IDLE.has(verb.lemma) && !GOES.test(verb.lemma)) && (!GOES.test(verb.lemma) || to >= 0)) {
    const object = phrase(resolve(talk, body.slice(verbAt + 1), at));
    const subject = frame.subject.some((c) => isNounTerm(c) && c.term!.kind !== 'role') ? phrase(frame.subject) : '';
    return { task: `${verb.lemma} ${object || subject || meant(talk, at)}`.trim(), who, confidence: 0.65 };
  }
  const goes = body.find((c) => c.verb && GOES.test(c.verb.lemma))?.verb?.lemma;
  const thing = phrase(frame.subject.filter((c) => c.term?.kind !== 'role'));
  if (booked && thing) return { task: thing.includes(' ') ? thing : `do ${thing}`, who, confidence: 0.65 };
  if (goes === 'start' || goes === 'begin') return { task: `start ${thing || meant(talk, at)}`, who, confidence: 0.65 };
  if (
    who &&
    !/inspector|permit/.test(said) &&
    (goes === 'come' || /\b(?:back|coming|here)\b/.test(said)) &&
    !conditionOf(frame)
  ) {
    const what = meant(talk, at);
    return what ? { task: `come${/\bback\b/.test(said) ? ' back' : ''} for ${what}`, who, confidence: 0.6 } : null;
  }
  // "Counter guy templates tuesday": behind who does it, a word that no table holds is what he does.
  const after = who
    ? body[body.findIndex((c) => c.start > (frame.chunks.find((r) => r.term?.kind === 'role')?.start ?? 0))]
    : undefined;
  if (who && after?.kind === 'word' && !isSmall(after.word) && /^[a-z]{4,}$/.test(after.word) && !after.verb)
    return {
      task: `${after.word.replace(/s$/, '')} ${phrase(body.slice(body.indexOf(after) + 1)) || meant(talk, at)}`.trim(),
      who,
      confidence: 0.6,
    };
  // "Inspection's thursday", "thursday is the second coat": work spoken of as a thing.
  const named = chunks.some(
    (c) =>
      c.term?.kind === 'work' ||
      /^(?:coat|inspection|walkthrough|pour|demo|delivery|final|punch)$/.test(c.word.replace(/'s$/, '')),
  );
  if (frame.predicate === 'copula' && named) {
    const deed = phrase(body.filter((c) => !isCopula(c)));
    return { task: deed.includes(' ') ? deed : `do ${deed}`, who, confidence: 0.6 };
  }
  // "Doors come in Friday" are delivered then.
  if (goes && goes !== 'come' && thing && /\b(?:in|on|up|down)\b/.test(said) && !isPointer(frame.subject))
    return { task: `install ${thing}`, who, confidence: 0.65 };
  return null;
}

/** A verb that somebody does: not "is", "will" or a noun of the trade. */
const doesWork = (c: Chunk) =>
  c.verb !== undefined && !isCopula(c) && !isModal(c) && !isNounTerm(c) && !c.verb.forms.has('past');
