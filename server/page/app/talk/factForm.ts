import { shownOf } from '../../../../parser/shown.ts';
import type { Fact, MaterialStatus } from '../../../../parser/types.ts';
import { decimalOf, exactOf } from '../kit/typedNumber.ts';

/** The thing that a fact is about, as a word that can be taught. */
export function nameIn(fact: Fact): string | null {
  if (fact.kind === 'material') return fact.item;
  if (fact.kind === 'problem') return fact.thing;
  return fact.kind === 'measurement' ? fact.of : null;
}

/** The fact with what the form says in place of what was read. Empty means that nothing is known. */
export function readForm(fact: Fact, form: FormData): Fact {
  const text = (name: string) => String(form.get(name) ?? '').trim() || null;
  const kept = (name: string, before: string) => text(name) ?? before;
  // Named by hand, it goes by that name.
  const work = (before: { task: string; wording?: string }) => {
    const task = kept('task', shownOf(before));
    return task === before.wording ? {} : { task, wording: undefined };
  };
  const base = { area: text('area'), confidence: 1 };
  switch (fact.kind) {
    case 'material': {
      const exact = exactOf(text('amount') ?? '');
      const status = kept('status', fact.status) as MaterialStatus;
      return {
        ...fact,
        ...base,
        item: kept('item', fact.item),
        size: text('size'),
        unit: text('unit'),
        status,
        exact,
        quantity: exact === null ? null : decimalOf(exact),
        atLeast: null,
      };
    }
    case 'measurement': {
      const exact = exactOf(text('amount') ?? '') ?? fact.exact;
      return {
        ...fact,
        ...base,
        of: kept('of', fact.of),
        unit: text('unit'),
        exact,
        value: decimalOf(exact),
        role: text('role') === 'wanted' ? 'wanted' : 'found',
      };
    }
    case 'problem':
      return {
        ...fact,
        ...base,
        ...(text('thing') === fact.thing && text('defect') === fact.defect ? {} : { wording: undefined }),
        thing: kept('thing', fact.thing),
        defect: kept('defect', fact.defect),
        state: text('state') === 'fixed' ? 'fixed' : 'open',
      };
    case 'followUp':
      return {
        ...fact,
        ...base,
        ...work(fact),
        who: text('who'),
        due: text('due'),
        notBefore: text('notBefore'),
      };
    case 'done':
      return { ...fact, ...base, ...work(fact) };
    case 'decision':
      return { ...fact, ...base, what: kept('what', fact.what) };
    case 'spending':
      return { ...fact, ...base, amount: Number(text('amount')) || fact.amount };
    case 'command':
      return { ...fact, ...base };
  }
}
