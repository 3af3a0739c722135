import { v7 as newId } from 'uuid';
import type { CheckAnswer, CheckForm, Form, FormAnswer } from '../../../takeoff/form/index.ts';
import { checkCall, reckonCall } from './calls.ts';
import { wordsOf } from './model.ts';
import { askReader } from './reader.ts';

export type Answer = FormAnswer | CheckAnswer | { ok: false; why: string };

/**
 * What the figures of a form come to. The phone works it out itself, so it needs no signal; one that has no reader of its
 * own asks the server, and says so where that does not answer.
 */
export async function answerTo(
  { key, goods }: { key: string; goods?: string },
  fields: Record<string, unknown>,
): Promise<Answer> {
  // What a question asks is what its form takes: tests/page holds the two together.
  const asked = goods
    ? { ask: 'reckon' as const, form: { kind: key, ...fields } as Form }
    : { ask: 'check' as const, form: { of: key, ...fields } as CheckForm };
  const here = await askReader({ id: newId(), ...asked });
  if (here?.ask === 'reckon') return here.answer;
  try {
    return await (asked.ask === 'reckon' ? reckonCall(asked.form) : checkCall(asked.form));
  } catch (error) {
    return { ok: false, why: wordsOf(error) };
  }
}
