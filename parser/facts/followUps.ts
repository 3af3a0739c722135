import { addDays } from '../times/days.ts';
import type { Done, FollowUp, Problem, TimeMention } from '../types.ts';
import { type Chunk, isDeterminer, isGoods, isModal, isNounTerm, isSubjectPronoun } from './chunks.ts';
import { roleIn } from './done.ts';
import type { Frame } from './frames.ts';
import { base } from './make.ts';
import { isHaveDo } from './predicate.ts';
import { antecedent, isPerson, isPointer, phrase, type Talk, thingIn } from './talk.ts';

/** What still has to be done, asked or checked, by whom and when. */
export function readFollowUps(talk: Talk, done: readonly Done[], problems: readonly Problem[]): FollowUp[] {
  const out: FollowUp[] = [];
  talk.frames.forEach((frame, at) => {
    const plan = planOf({ ...talk, problems }, frame, at, done);
    if (!plan) return;
    const wait = waitBefore(talk, frame, at);
    const { due, notBefore: said } = datesOf(talk, frame, at, plan, wait);
    // "Float it friday, then let that cure three days": the wait begins on the friday.
    const begins = wait?.hours !== undefined && out.at(-1)?.due;
    const notBefore = begins && said && said === wait?.date ? addDays(begins, Math.ceil(wait.hours! / 24)) : said;
    const start = wait ? Math.min(wait.start, frame.start) : frame.start;
    const where = talk.frames[at + 1];
    const both =
      where && /^both (?:rooms|sides|areas)$/.test(where.chunks.map((c) => c.word).join(' ')) ? where.end : frame.end;
    const end = Math.max(trailingDate(talk, at)?.end ?? frame.end, both);
    out.push({
      ...base(talk, frame, `follow-up/${frame.predicate}`, { start, end: Math.max(frame.end, end) }, plan.confidence),
      kind: 'followUp',
      task: plan.task,
      who: plan.who,
      due,
      notBefore,
      waitingFor: wait ? wait.quote : null,
      condition: conditionOf(frame),
    });
  });
  return merged(out);
}

/** The talk with the flaws already found: a repair speaks of one. */
type Told = Talk & { problems: readonly Problem[] };

interface Plan {
  task: string;
  who: string | null;
  confidence: number;
  held?: boolean;
}

const BUYS = /^(get|grab|buy|order|bring|purchase|pick)$/;
const IDLE = new Set(
  'be have let know think guess say tell figure want need like love hope see try work happen cost take go come mean remember wait worry care believe mind swear feel seem sound trust forget stay stop sit'.split(
    ' ',
  ),
);

function planOf(talk: Told, frame: Frame, at: number, done: readonly Done[]): Plan | null {
  const { chunks, predicate, lemma } = frame;
  const said = chunks.map((c) => c.word).join(' ');
  if (
    /^(?:let's see|let me see|let me|you know|i mean|i guess|take it easy|have a|never mind|do not worry|don't worry)\b/.test(
      said,
    )
  )
    return null;
  if (predicate === 'imperative') {
    if (/^(don't|dont|do)$/.test(chunks[frame.verbAt]!.word)) return heldBack(talk, frame, at, done);
    if (chunks[frame.verbAt]!.word === 'let') return letPlan(talk, frame, at);
    if (isHaveDo(chunks, frame.verbAt)) return haveDo(talk, frame, at, done);
    if (BUYS.test(lemma ?? '') && isPurchase(frame)) return null;
    if (lemma === 'remind') {
      const to = chunks.findIndex((c, k) => c.word === 'to' && chunks[k + 1]?.verb);
      return to < 0
        ? null
        : {
            task: `${chunks[to + 1]!.verb!.lemma} ${phrase(cutAtTime(resolve(talk, chunks.slice(to + 2), at, done)))}`.trim(),
            who: null,
            confidence: 0.8,
          };
    }
    if (lemma === 'order' && frame.rest[0]?.word === 'number') return null;
    if (lemma === 'hold' && frame.rest.length <= 1) return null;
    if (lemma === 'make' && frame.rest.some((c) => c.quantity)) return null;
    if (lemma === 'keep' || lemma === 'leave')
      return frame.chunks.some((c) => c.time)
        ? { task: verbPhrase(talk, frame, at, done), who: null, confidence: 0.55 }
        : null;
    if (lemma === 'make' && frame.rest[0]?.word === 'sure')
      return { task: `make sure ${phrase(frame.rest.slice(1))}`, who: null, confidence: 0.75 };
    if (
      /^(let|know|think|say|hear|see|guess|mind|like|love|trust|figure|wait|give|need|want|be|go|take|hold|thank|sleep|eat|drive)$/.test(
        lemma ?? '',
      ) &&
      !/^(take (?:it|that|them|those|the|out|off|down|back)|go (?:back|over|get)|give .* (?:call|ring)|hold off)/.test(
        said,
      )
    )
      return null;
    return { task: verbPhrase(talk, frame, at, done), who: null, confidence: 0.85 };
  }
  if (predicate === 'owed') {
    if (/\b(?:don't|doesn't|didn't|dont|no) (?:need|have|want)\b/.test(said)) return null;
    return owedPlan(talk, frame, at, done);
  }
  if (predicate === 'modal') {
    if (isModal(chunks[frame.verbAt])) return null;
    if (
      frame.negative ||
      (/\b(?:could|can|would|should've|do|does|did|may|might)\b/.test(said) && !/\bshould\b/.test(said))
    ) {
      if (
        /\bthen (?:i|we) can\b|^(?:i|we|you) can\b/.test(said) &&
        lemma &&
        !IDLE.has(lemma) &&
        waitBefore(talk, frame, at)
      )
        return { task: verbPhrase(talk, frame, at, done), who: null, confidence: 0.65 };
      if (
        !frame.negative &&
        lemma &&
        personIn(frame.subject) &&
        chunks.some((c) => c.time && !c.time.past) &&
        (!IDLE.has(lemma) || lemma === 'start')
      )
        return { task: verbPhrase(talk, frame, at, done), who: personIn(frame.subject), confidence: 0.65 };
      const held =
        frame.negative &&
        frame.subject.length > 0 &&
        !isPerson(frame.subject) &&
        chunks.some((c) => c.time?.relation === 'notBefore');
      if (held)
        return {
          task: /^(?:go|happen|start)$/.test(lemma ?? '')
            ? `do ${phrase(frame.subject)}`
            : `${lemma} ${phrase(frame.subject)}`,
          who: null,
          confidence: 0.65,
          held: true,
        };
      if (!frame.negative && frame.openers.includes('then') && /\bcan\b/.test(said) && lemma && !IDLE.has(lemma))
        return { task: verbPhrase(talk, frame, at, done), who: null, confidence: 0.65, held: true };
      return null;
    }
    if (
      !lemma ||
      !chunks[frame.verbAt]?.verb ||
      (IDLE.has(lemma) && !/^(go|come|take)$/.test(lemma)) ||
      (BUYS.test(lemma) && isPurchase(frame) && !(lemma === 'bring' && chunks.some((c) => c.time)))
    )
      return null;
    if (
      frame.subject.length &&
      !isPerson(frame.subject) &&
      !/\b(?:gonna|going to) (?:be|get|need)\b|\bshould be\b/.test(said)
    )
      return null;
    return { task: verbPhrase(talk, frame, at, done), who: personIn(frame.subject), confidence: 0.75 };
  }
  if (
    predicate === 'past' &&
    lemma === 'ask' &&
    frame.rest[0]?.word === 'for' &&
    frame.rest.some(isGoods) &&
    isPerson(frame.subject) &&
    !/^(?:i|we)$/.test(chunks[0]!.word)
  )
    return { task: `install ${phrase(cutAtTime(frame.rest.slice(1)))}`, who: null, confidence: 0.6 };
  if (frame.use === 'say' && personIn(frame.subject)) {
    const will = chunks.findIndex(
      (c, k) => k > frame.verbAt && (/'(?:ll|d)$/.test(c.word) || /^(?:will|gonna|can)$/.test(c.word)),
    );
    const doing = will < 0 ? -1 : chunks.findIndex((c, k) => k > will && c.verb);
    const verb = chunks[doing]?.verb;
    return verb && !IDLE.has(verb.lemma)
      ? {
          task: `${verb.lemma} ${phrase(cutAtTime(resolve(talk, chunks.slice(doing + 1), at, done)))}`.trim(),
          who: personIn(frame.subject),
          confidence: 0.7,
        }
      : null;
  }
  const getting = predicate === 'past' && chunks[frame.verbAt]?.word === 'getting' && personIn(frame.subject);
  if (getting && chunks.some((c) => c.time && !c.time.past))
    return { task: `get ${phrase(cutAtTime(frame.rest))}`, who: getting, confidence: 0.7 };
  if (predicate === 'present') return presentPlan(talk, frame, at, done, said);
  if (predicate === 'none' || predicate === 'copula') return barePlan(talk, frame, at, done, said);
  return null;
}

/** "He wants photos", "owner is getting the sign", "sealer crew comes monday to seal it", "sawcuts go in tomorrow". */
function presentPlan(talk: Told, frame: Frame, at: number, done: readonly Done[], said: string): Plan | null {
  const { lemma, chunks } = frame;
  if (frame.negative) return null;
  const dated = chunks.some((c) => c.time && !c.time.past);
  if (lemma === 'come' || lemma === 'go') {
    const to = chunks.findIndex((c, k) => k > frame.verbAt && c.word === 'to' && chunks[k + 1]?.verb);
    if (to > 0 && dated)
      return {
        task: `${chunks[to + 1]!.verb!.lemma} ${phrase(resolve(talk, chunks.slice(to + 2), at, done))}`,
        who: personIn(frame.subject),
        confidence: 0.75,
      };
    const later = dated || /\b(?:after|once|when)\b/.test(said);
    if (later && frame.subject.length && !isPerson(frame.subject) && /\b(?:in|on|up|down|back|off)\b/.test(said))
      return {
        task: `install ${isPointer(frame.subject) ? meant(talk, at) : phrase(frame.subject)}`,
        who: null,
        confidence: 0.7,
      };
    return dated && isPerson(frame.subject) && /\b(?:back)\b/.test(said)
      ? { task: phrase(chunks.slice(frame.verbAt)), who: personIn(frame.subject), confidence: 0.7 }
      : null;
  }
  if (chunks[frame.verbAt]?.verb?.forms.has('ing') && (dated || personIn(frame.subject)) && lemma && !IDLE.has(lemma))
    return { task: verbPhrase(talk, frame, at, done), who: personIn(frame.subject), confidence: 0.7 };
  if (
    /^(?:somebody|someone)$/.test(frame.subject[0]?.word ?? '') &&
    lemma &&
    (frame.use === 'work' || frame.use === 'see') &&
    !chunks[frame.verbAt]!.verb!.forms.has('s')
  )
    return { task: verbPhrase(talk, frame, at, done), who: null, confidence: 0.7 };
  if (
    dated &&
    lemma &&
    (frame.use === 'work' || /^(?:start|finish|do|look|check)$/.test(lemma)) &&
    isPerson(frame.subject)
  )
    return { task: verbPhrase(talk, frame, at, done), who: personIn(frame.subject), confidence: 0.7 };
  if (dated && lemma === 'rent')
    return { task: verbPhrase(talk, frame, at, done), who: personIn(frame.subject), confidence: 0.7 };
  return null;
}

/** Clauses with no verb that still owe something: "replace", "pickup 10:30", "adjust closer", "touch up behind bar". */
function barePlan(talk: Told, frame: Frame, at: number, done: readonly Done[], said: string): Plan | null {
  if (/\bnot to \w+|\bno \w+ (?:until|till|til|before)\b/.test(said) && frame.chunks.some((c) => c.time)) {
    const to = frame.chunks.findIndex((c) => c.word === 'to' || c.word === 'no');
    const verb = frame.chunks[to + 1];
    if (verb)
      return {
        task: `${verb.verb?.lemma ?? verb.word} ${phrase(cutAtTime(resolve(talk, frame.chunks.slice(to + 2), at, done))) || meant(talk, at)}`.trim(),
        who: personIn(frame.chunks),
        confidence: 0.7,
        held: true,
      };
  }
  const role = personIn(frame.subject);
  const told = toldTo(talk, frame, at, done);
  if (told) return told;
  const doing = frame.predicate === 'copula' ? frame.rest.find((c) => /ing$/.test(c.word) && c.verb) : undefined;
  if (doing?.verb && role && !IDLE.has(doing.verb.lemma))
    return {
      task: `${doing.verb.lemma} ${phrase(cutAtTime(resolve(talk, frame.rest.slice(frame.rest.indexOf(doing) + 1), at, done)))}`.trim(),
      who: role,
      confidence: 0.75,
    };
  if (/\b(?:going|goes|go) back\b/.test(said) && !isPerson(frame.subject))
    return {
      task: `send back ${isPointer(frame.subject) ? meant(talk, at) : phrase(frame.subject)}`,
      who: null,
      confidence: 0.7,
    };
  const owed = owedInside(frame);
  if (owed) return owed;
  const dated = datedEntry(frame) ?? datedSubject(talk, frame, at);
  if (dated) return dated;
  const verb = frame.chunks[0];
  if (
    frame.predicate === 'none' &&
    verb?.verb?.forms.has('base') &&
    !verb.verb.forms.has('past') &&
    !isNounTerm(verb) &&
    frame.chunks.length === 1 &&
    !IDLE.has(verb.verb.lemma)
  )
    return { task: `${verb.verb.lemma} ${meant(talk, at)}`, who: null, confidence: 0.7 };
  return null;
}

/** "Flooring sub to reglue by friday", "needs the roofer to look at it", "plumber's coming thursday to look": somebody, "to", and the work. */
function toldTo(talk: Told, frame: Frame, at: number, done: readonly Done[]): Plan | null {
  const { chunks } = frame;
  const to = chunks.findIndex((c, k) => c.word === 'to' && chunks[k + 1]?.verb?.forms.has('base'));
  const who = to > 0 ? chunks.slice(0, to).findLast((c) => c.term?.kind === 'role') : undefined;
  if (!who) return null;
  const near = to - chunks.indexOf(who);
  const coming = chunks.slice(0, to).some((c) => /^(?:coming|comes|be here|here)$/.test(c.word));
  if (near > 1 && !coming) return null;
  const verb = chunks[to + 1]!.verb!;
  if (IDLE.has(verb.lemma) || frame.negative) return null;
  const object = phrase(cutAtTime(resolve(talk, chunks.slice(to + 2), at, done)));
  return {
    task: `${verb.lemma} ${object || meant(talk, at)}`.trim(),
    who: who.word.replace(/'s$/, ''),
    confidence: 0.75,
  };
}

/** "There's a cold joint at the drain that has to be ground": owed in a clause of its own. */
function owedInside(frame: Frame): Plan | null {
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

/** "Sand and prime is monday": the work stands where a thing would. */
function datedSubject(talk: Told, frame: Frame, at: number): Plan | null {
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
function datedEntry(frame: Frame): Plan | null {
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
  const work = frame.chunks.filter((c) => c.kind === 'term' || c.kind === 'word');
  const named =
    work.some((c) => isNounTerm(c) && c.term!.kind !== 'area' && c.term!.kind !== 'role') ||
    work.some((c) => c.verb?.forms.has('base') || c.verb?.forms.has('ing') || c.term?.kind === 'work');
  const doing = frame.chunks[0]!.verb?.forms.has('ing') ? frame.chunks[0]! : undefined;
  const task = phrase(
    work
      .map((c) => (c === doing ? { ...c, word: c.verb!.lemma } : c))
      .filter((c) => c.term?.kind !== 'role' && !/^(?:by|on|for|due)$/.test(c.word)),
  );
  return named && task
    ? { task: task.includes(' ') ? task : `do ${task}`, who: personIn(frame.chunks), confidence: 0.6 }
    : null;
}

/** "Don't caulk till monday": held back, not forbidden, when a day or a wait ends it. */
function heldBack(talk: Told, frame: Frame, at: number, done: readonly Done[]): Plan | null {
  const verbAt = frame.chunks.findIndex((c, k) => k > frame.verbAt && c.verb);
  if (verbAt < 0) return null;
  const until =
    frame.chunks.some((c) => c.time) ||
    /\b(?:till|til|until|before|b4)\b/.test(frame.chunks.map((c) => c.word).join(' '));
  if (!until) return null;
  const verb = frame.chunks[verbAt]!.verb!;
  return IDLE.has(verb.lemma)
    ? null
    : {
        task: `${verb.lemma} ${phrase(cutAtTime(resolve(talk, frame.chunks.slice(verbAt + 1), at, done))) || meant(talk, at)}`,
        who: personIn(frame.subject),
        confidence: 0.75,
        held: true,
      };
}

/** "Let it cure 24 hours" is a wait, and a task only where nothing follows it; "let the plumber look at it" is a task. */
function letPlan(talk: Told, frame: Frame, at: number): Plan | null {
  const rest = frame.rest;
  const verb = rest.findIndex((c) => c.verb?.forms.has('base'));
  if (verb < 1) return null;
  const who = personIn(rest.slice(0, verb));
  const next = rest.findIndex((c, k) => k > verb && (c.word === 'before' || c.word === 'then'));
  const step = next < 0 ? -1 : rest.findIndex((c, k) => k > next && c.verb && !isSubjectPronoun(c));
  if (step > 0 && rest[step]!.verb!.lemma !== 'be')
    return {
      task: `${rest[step]!.verb!.lemma} ${phrase(rest.slice(step + 1)) || meant(talk, at)}`,
      who: null,
      confidence: 0.75,
    };
  if (rest[verb]!.verb!.lemma === 'know' && !/^(?:me|us)$/.test(rest[0]!.word))
    return {
      task: `let ${rest
        .slice(0, verb)
        .map((c) => c.word)
        .join(' ')} know`,
      who: null,
      confidence: 0.7,
    };
  return who && rest[verb]!.verb!.lemma !== 'know'
    ? {
        task: `${rest[verb]!.verb!.lemma} ${phrase(resolve(talk, rest.slice(verb + 1), at, []))}`,
        who,
        confidence: 0.7,
      }
    : null;
}

function haveDo(talk: Told, frame: Frame, at: number, done: readonly Done[]): Plan | null {
  const from = frame.verbAt + 1;
  const verb = frame.chunks.findIndex(
    (c, k) => k > from && c.verb?.forms.has('base') && !(isNounTerm(c) && k === from),
  );
  if (verb < 0) return null;
  const lemma = frame.chunks[verb]!.verb!.lemma;
  return {
    task: `${lemma} ${phrase(cutAtTime(resolve(talk, frame.chunks.slice(verb + 1), at, done)))}`,
    who: personIn(frame.chunks.slice(from, verb)) ?? phrase(frame.chunks.slice(from, verb)),
    confidence: 0.85,
  };
}

function owedPlan(talk: Told, frame: Frame, at: number, done: readonly Done[]): Plan | null {
  const { chunks, verbAt } = frame;
  const verb = chunks[verbAt]?.verb;
  if (!verb) return null;
  if (frame.use === 'need' || verb.lemma === 'want' || verb.lemma === 'need') return needsPlan(talk, frame, at, done);
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
  const rest = cutAtTime(resolve(talk, frame.rest, at, done));
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
function needsPlan(talk: Told, frame: Frame, at: number, done: readonly Done[]): Plan | null {
  const { chunks, verbAt } = frame;
  const object = chunks.slice(verbAt + 1);
  const ing = object.findIndex((c) => c.verb?.forms.has('ing'));
  const thing = isPointer(frame.subject) ? meant(talk, at) : phrase(frame.subject);
  const asked = toldTo(talk, frame, at, done);
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
  if (!object.length || object.some((c) => c.quantity || isGoods(c))) return null;
  return thing
    ? { task: `${phrase(cutAtTime(resolve(talk, object, at, done)))} ${thing}`, who: null, confidence: 0.6 }
    : null;
}

function verbPhrase(talk: Told, frame: Frame, at: number, done: readonly Done[]): string {
  if (frame.rest.length && frame.rest.every((c) => c.time) && !waitBefore(talk, frame, at)) return frame.lemma ?? '';
  if (frame.rest.every((c) => c.time || c.kind === 'mark'))
    return `${frame.lemma} ${waitBefore(talk, frame, at) ? lastMade(talk, frame, done) || meant(talk, at) : meant(talk, at)}`;
  // "Swap for rigid", "move to the left": what is swapped was told before.
  if (
    /^(?:for|to)$/.test(frame.rest[0]?.word ?? '') &&
    /^(?:swap|change|exchange|move|switch|replace)$/.test(frame.lemma ?? '')
  )
    return `${frame.lemma} ${meant(talk, at)} ${phrase(cutAtTime(frame.rest))}`;
  if (
    /^(?:ask|tell|call|text|email|remind|show)$/.test(frame.lemma ?? '') &&
    /^(?:him|her|them)$/.test(frame.rest[0]?.word ?? '')
  ) {
    const whom = talk.frames
      .slice(0, at + 1)
      .flatMap((f) => f.chunks)
      .findLast((c) => c.term?.kind === 'role' && c.start < frame.start);
    if (whom) return `${frame.lemma} ${whom.word.replace(/'s$/, '')} ${phrase(cutAtTime(frame.rest.slice(1)))}`.trim();
  }
  return `${frame.lemma ?? phrase([frame.chunks[frame.verbAt]!])} ${phrase(cutAtTime(resolve(talk, frame.rest, at, done)))}`.trim();
}

/** Puts the named thing where "it" stands: what was last finished for the step after a wait, else the last thing named. */
function resolve(talk: Told, chunks: readonly Chunk[], at: number, done: readonly Done[]): Chunk[] {
  const k = chunks.findIndex((c) => /^(it|them|that|those|these|'em|em|this|one)$/.test(c.word));
  if (k < 0 || chunks.some((c, j) => isNounTerm(c) && c.term!.kind !== 'area' && c.term!.kind !== 'role' && j <= k + 1))
    return [...chunks];
  const frame = talk.frames[at]!;
  const word = (waitBefore(talk, frame, at) && lastMade(talk, frame, done)) || meant(talk, at);
  return [...chunks.slice(0, k), { ...chunks[k]!, kind: 'word', word }, ...chunks.slice(k + 1)];
}

/** What a step comes after, where talk leaves it at "it": common practice, no source. */
const COMES_AFTER: Readonly<Record<string, RegExp>> = {
  grout: /^(?:tile|lay|set|install|finish)\b/,
  sand: /^(?:mud|tape|coat|patch|skim|apply|prime)\b|\b(?:mud|coat|patch)\b/,
  prime: /^(?:sand|patch|tape|skim|float)\b/,
  paint: /^(?:prime|sand|caulk)\b/,
  seal: /^(?:grout|pour|stain|caulk)\b/,
};

/** What was last finished before this clause. */
function lastMade(talk: Talk, frame: Frame, done: readonly Done[]): string {
  const before = done.filter((d) => d.end <= frame.start);
  const suits = COMES_AFTER[frame.lemma ?? ''];
  const made = (suits && before.findLast((d) => suits.test(d.task))) ?? before.at(-1);
  const told = made && talk.frames.find((f) => f.start === made.start);
  return told ? phrase(thingIn(told.chunks)) : '';
}

/** What "it" is, in words: the flaw found just before, for a repair; else the thing last named. */
function meant(talk: Told, at: number): string {
  const from = talk.frames[Math.max(0, at - 3)]!.start;
  const flaw = talk.problems
    .filter((p) => p.start >= from && p.start < talk.frames[at]!.start && p.thing !== 'something')
    .at(-1);
  return flaw ? flaw.thing : phrase(antecedent(talk, at));
}

/** A task's words end where its condition or its date begins. */
function cutAtTime(chunks: readonly Chunk[]): Chunk[] {
  const end = chunks.findIndex(
    (c, k) =>
      !(c.word === 'if' && k <= 1) &&
      /^(before|until|till|til|when|if|so|because|b4|once|after|since|unless)$/.test(c.word),
  );
  return (end >= 0 ? chunks.slice(0, end) : chunks).filter((c) => c.kind !== 'time' && !/^(by|on)$/.test(c.word));
}

/** "Get two tubes", "pick up a box": goods, so it belongs to the order. */
const isPurchase = (frame: Frame) => frame.rest.some((c) => isGoods(c) || c.quantity) || frame.rest.length <= 2;

function personIn(chunks: readonly Chunk[]): string | null {
  const role = roleIn(chunks);
  if (role) return role;
  return null;
}

/** The wait that this step comes after: "let it cure 24 hours, then grout", "has to dry overnight before we sand". */
function waitBefore(talk: Talk, frame: Frame, at: number): TimeMention | null {
  const own = frame.chunks.find((c) => c.time?.hours !== undefined || c.time?.relation === 'notBefore');
  if (own) return own.time!;
  if (
    !frame.openers.includes('then') &&
    !frame.openers.includes('before') &&
    !/^(and|word|comma|run-on)$/.test(frame.joinedBy)
  )
    return null;
  for (let k = at - 1; k >= 0 && k >= at - 2; k--) {
    const earlier = talk.frames[k]!;
    const time = earlier.chunks.find((c) => c.time?.hours !== undefined || c.time?.relation === 'notBefore');
    if (time) return isWaitFrame(earlier) ? time.time! : null;
    if (earlier.predicate === 'imperative' && earlier.chunks[earlier.verbAt]?.word !== 'let') return null;
  }
  const next = talk.frames[at + 1];
  const after = next?.chunks.find((c) => c.time?.hours !== undefined);
  return next &&
    after &&
    isWaitFrame(next) &&
    (next.joinedBy === 'word' || next.joinedBy === 'run-on') &&
    next.openers.some((o) => o === 'but' || o === 'once')
    ? after.time!
    : null;
}

const isWaitFrame = (frame: Frame) =>
  /\b(let|cure|cures|dry|dries|set|sit|sits|wait|give|leave|rest|hour|hours|hrs|overnight|days?|keep)\b/.test(
    frame.chunks.map((c) => c.word).join(' '),
  );

function datesOf(
  talk: Talk,
  frame: Frame,
  at: number,
  plan: Plan,
  wait: TimeMention | null,
): { due: string | null; notBefore: string | null } {
  const own = frame.chunks.flatMap((c) => (c.time && !c.time.past ? [c.time] : []));
  const lead = leadingDate(talk, at);
  const trail = trailingDate(talk, at);
  let due: string | null = null;
  let notBefore: string | null = wait ? wait.date : null;
  for (const time of [...own, ...(trail ? [trail] : []), ...(lead ? [lead] : [])]) {
    if (plan.held || time.relation === 'notBefore' || time.relation === 'after' || time.hours !== undefined)
      notBefore ??= time.date;
    else due ??= time.to ?? time.date;
  }
  if (
    due &&
    /^(?:no|not|never) (?:before|sooner|earlier)$/.test(talk.frames[at + 1]?.chunks.map((c) => c.word).join(' ') ?? '')
  )
    notBefore ??= due;
  if (!due && plan.who) due = arrivalAfter(talk, at);
  return { due, notBefore };
}

/** "The plumber's gotta change it, he said he can be here tuesday": his day is the job's. */
function arrivalAfter(talk: Talk, at: number): string | null {
  for (const frame of talk.frames.slice(at + 1, at + 3)) {
    const time = frame.chunks.find((c) => c.time && !c.time.past)?.time;
    if (
      time &&
      /^(?:he|she|they)\b|\b(?:be here|be by|come|coming|comes|be out)\b/.test(
        frame.chunks.map((c) => c.word).join(' '),
      )
    )
      return time.date;
  }
  return null;
}

/** A bare date clause before ("friday, call the yard") or after ("do that tomorrow"). */
function trailingDate(talk: Talk, at: number): TimeMention | null {
  const next = talk.frames[at + 1];
  if (!next) return null;
  const words = next.chunks.map((c) => c.word).join(' ');
  const time = next.chunks.find((c) => c.time && !c.time.past)?.time;
  if (!time) return null;
  const only = next.chunks.every(
    (c) => c.time || c.kind === 'mark' || /^(by|on|before|first|thing|sometime|that|do|it|so)$/.test(c.word),
  );
  return (only && next.joinedBy !== 'stop') || /^do (?:that|it|this)\b/.test(words) ? time : null;
}

function leadingDate(talk: Talk, at: number): TimeMention | null {
  const before = talk.frames[at - 1];
  if (!before) return null;
  const frame = talk.frames[at]!;
  const dated = before.chunks.find((c) => c.time && !c.time.past && c.time.hours === undefined)?.time;
  // "Pick one up tomorrow and try it", "he can be here tuesday and then I can finish": the day holds on.
  if (
    dated &&
    before.sentence === frame.sentence &&
    ((frame.joinedBy === 'and' && before.predicate === 'imperative') || frame.openers.includes('then'))
  )
    return dated;
  return before.chunks.every((c) => c.time || c.kind === 'mark' || isDeterminer(c) || /^(on|for|come)$/.test(c.word)) &&
    before.joinedBy !== 'word'
    ? (before.chunks.find((c) => c.time && !c.time.past)?.time ?? null)
    : null;
}

function conditionOf(frame: Frame): string | null {
  const k = frame.chunks.findIndex((c) => c.word === 'if' || c.word === 'unless');
  return k < 0
    ? null
    : frame.chunks
        .slice(k)
        .map((c) => c.word)
        .join(' ');
}

/** One job told twice in a note is one; "do that tomorrow" only dates the job before it. */
function merged(plans: readonly FollowUp[]): FollowUp[] {
  const out: FollowUp[] = [];
  for (const plan of plans) {
    if (/^do (?:that|it|this)?\b/.test(plan.task) && plan.task.split(' ').length <= 2) continue;
    const twin = out.find((p) => p.task === plan.task && p.area === plan.area);
    if (!twin) out.push(plan);
    else {
      twin.due ??= plan.due;
      twin.notBefore ??= plan.notBefore;
    }
  }
  return out.filter((p) => p.task.includes(' ') || ((p.due ?? p.notBefore) !== null && p.task));
}
