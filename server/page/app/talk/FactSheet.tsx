import { shownOf } from '../../../../parser/shown.ts';
import type { Fact, MaterialStatus } from '../../../../parser/types.ts';
import type { JobView } from '../../../http/api.ts';
import { offerToTeach } from '../kit/firm.ts';
import { useModal } from '../kit/hooks.ts';
import { change } from '../kit/model.ts';
import { correctWaiting } from '../kit/notes.ts';
import type { ShownTalk } from '../kit/pending.ts';
import { SheetButtons } from '../kit/SheetButtons.tsx';
import { fractionWords, kindWord } from '../kit/words.ts';
import { SameAs } from '../list/SameAs.tsx';
import { nameIn, readForm } from './factForm.ts';

const problemStates = [
  ['open', 'still so'],
  ['fixed', 'fixed'],
] as const;
const roles = [
  ['found', 'as found'],
  ['wanted', 'as it has to be'],
] as const;
const statuses: [MaterialStatus, string][] = [
  ['need', 'to buy'],
  ['have', 'on hand'],
  ['used', 'used'],
  ['bought', 'bought'],
  ['ordered', 'ordered'],
  ['returned', 'returned'],
];

/** Puts one reading right, in a note that was sent or in one that waits: what was read can be changed, or said to be nothing. */
export function FactSheet({
  noteId,
  index,
  fact,
  waits,
  view,
  onClose,
}: {
  noteId: string;
  index: number;
  fact: Fact;
  waits: ShownTalk['unsent'];
  view: JobView;
  onClose: () => void;
}) {
  const dialog = useModal();
  const item = view.state.items.find((i) => i.key === `${noteId}/${index}`);
  const correct = (put: Fact | null) => {
    const words = put ? 'Put right.' : 'Left out.';
    void (waits
      ? correctWaiting(waits, index, put, words)
      : change({ kind: 'correctFact', noteId, index, fact: put }, words));
    const [before, after] = [nameIn(fact), put && nameIn(put)];
    if (before && after && before !== after)
      void offerToTeach(before, { name: after, kind: fact.kind === 'material' ? 'material' : 'part' });
    dialog.current?.close();
  };
  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="fact-title" onClose={onClose}>
      <form
        onSubmit={(e) => {
          e.preventDefault();
          const form = new FormData(e.currentTarget);
          const as = String(form.get('as') ?? '');
          if (as && item) {
            void change({ kind: 'sameAs', item: item.key, as }, `No. ${item.number} joined to another.`);
            dialog.current?.close();
          } else correct(readForm(fact, form));
        }}
      >
        <h2 id="fact-title">
          Read as <i>{kindWord(fact)}</i>
        </h2>
        <p class="quote">“{fact.quote}”</p>
        <Fields fact={fact} />
        <label>
          Area
          <input name="area" list="areas" defaultValue={fact.area ?? ''} />
        </label>
        <datalist id="areas">
          {view.job.areas.map((area) => (
            <option key={area} value={area} />
          ))}
        </datalist>
        {item && <SameAs item={item} items={view.state.items} />}
        <p class="why">Why: rule “{fact.rule}”.</p>
        <SheetButtons does="Put right" dialog={dialog} />
        <button type="button" class="plain warn" onClick={() => correct(null)}>
          Not this
        </button>
      </form>
    </dialog>
  );
}

function Fields({ fact }: { fact: Fact }) {
  switch (fact.kind) {
    case 'material':
      return (
        <>
          <Text name="item" label="Thing" value={fact.item} />
          <Amount exact={fact.exact} unit={fact.unit} />
          <Text name="size" label="Size" value={fact.size} />
          <Choice name="status" label="It is" value={fact.status} choices={statuses} />
        </>
      );
    case 'measurement':
      return (
        <>
          <Text name="of" label="What was measured" value={fact.of} />
          <Amount exact={fact.exact} unit={fact.unit} />
          <Choice name="role" label="It is" value={fact.role} choices={roles} />
        </>
      );
    case 'problem':
      return (
        <>
          <Text name="thing" label="Thing" value={fact.thing} />
          <Text name="defect" label="What is wrong" value={fact.defect} />
          <Choice name="state" label="It is" value={fact.state} choices={problemStates} />
        </>
      );
    case 'followUp':
      return (
        <>
          <Text name="task" label="To do" value={shownOf(fact)} />
          <Text name="who" label="Who (empty: me)" value={fact.who} />
          <Day name="due" label="Due" value={fact.due} />
          <Day name="notBefore" label="Not before" value={fact.notBefore} />
        </>
      );
    case 'done':
      return <Text name="task" label="Done" value={shownOf(fact)} />;
    case 'decision':
      return <Text name="what" label="Decided" value={fact.what} />;
    case 'spending':
      return <Text name="amount" label={`Amount, ${fact.currency}`} value={String(fact.amount)} />;
    case 'command':
      return null;
  }
}

function Text({ name, label, value }: { name: string; label: string; value: string | null }) {
  return (
    <label>
      {label}
      <input name={name} defaultValue={value ?? ''} />
    </label>
  );
}

function Choice({
  name,
  label,
  value,
  choices,
}: {
  name: string;
  label: string;
  value: string;
  choices: readonly (readonly [string, string])[];
}) {
  return (
    <label>
      {label}
      <select name={name}>
        {choices.map(([choice, word]) => (
          <option key={choice} value={choice} selected={choice === value}>
            {word}
          </option>
        ))}
      </select>
    </label>
  );
}

function Day({ name, label, value }: { name: string; label: string; value: string | null }) {
  return (
    <label>
      {label}
      <input type="date" name={name} defaultValue={value ?? ''} />
    </label>
  );
}

function Amount({ exact, unit }: { exact: string | null; unit: string | null }) {
  return (
    <div class="row">
      <label>
        How many, how much
        <input
          name="amount"
          defaultValue={exact === null ? '' : fractionWords(exact)}
          inputMode="text"
          pattern="\s*-?(\d+(\s+|\s*-\s*)\d+/\d+|\d+/\d+|\d*\.?\d+)\s*"
          title="A number: 3, 2.5 or 1-3/8"
        />
      </label>
      <label>
        Unit
        <input name="unit" defaultValue={unit ?? ''} />
      </label>
    </div>
  );
}
