import { useState } from 'preact/hooks';
import type { NewWord, TaughtWord } from '../../../http/api.ts';
import { forget, teach } from '../kit/firm.ts';
import { useModal } from '../kit/hooks.ts';
import { wordsOf } from '../kit/model.ts';
import { SheetButtons } from '../kit/SheetButtons.tsx';

const kinds: readonly [NewWord['kind'], string][] = [
  ['material', 'something to buy'],
  ['part', 'a part of the building'],
  ['fixture', 'a fixture'],
  ['tool', 'a tool'],
  ['area', 'a room or area'],
  ['role', 'a trade or a person'],
  ['defect', 'a flaw'],
];
const counters =
  'tile paint drywall lumber hardware flooring electrical plumbing hvac roofing concrete doors landscape'.split(' ');

/** Teaches the firm's own word, or teaches it otherwise. It is read from the next note on. */
export function WordSheet({ word, onClose }: { word: NewWord | TaughtWord | null; onClose: () => void }) {
  const dialog = useModal();
  const id = word && 'id' in word ? word.id : null;
  const [wrong, setWrong] = useState('');
  const tried = async (work: Promise<void>) => {
    try {
      await work;
      dialog.current?.close();
    } catch (error) {
      setWrong(`Not kept. ${wordsOf(error)}`);
    }
  };
  const keep = (form: FormData) => {
    const text = (name: string) => String(form.get(name) ?? '').trim();
    const list = (name: string) =>
      text(name)
        .split(',')
        .map((w) => w.trim())
        .filter(Boolean);
    const taught: NewWord = {
      name: text('name'),
      kind: text('kind') as NewWord['kind'],
      also: list('also'),
      soldBy: list('soldBy'),
      ...(text('counter') && { counter: text('counter') }),
      ...(text('holds') && { holds: text('holds') }),
    };
    return tried(teach(taught, id ?? undefined));
  };
  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="word-title" onClose={onClose}>
      <form
        onSubmit={(e) => {
          e.preventDefault();
          void keep(new FormData(e.currentTarget));
        }}
      >
        <h2 id="word-title">{id ? 'A word of yours' : 'Teach a word'}</h2>
        <label>
          The word
          <input name="name" required minLength={2} maxLength={60} defaultValue={word?.name ?? ''} />
        </label>
        <label>
          Also said, commas between
          <input name="also" defaultValue={word?.also?.join(', ') ?? ''} />
        </label>
        <label>
          It is
          <select name="kind">
            {kinds.map(([kind, words]) => (
              <option key={kind} value={kind} selected={kind === word?.kind}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <div class="row">
          <label>
            Bought at
            <input name="counter" list="counters" defaultValue={word?.counter ?? ''} />
          </label>
          <label>
            By the
            <input name="soldBy" placeholder="bag, box" defaultValue={word?.soldBy?.join(', ') ?? ''} />
          </label>
          <label>
            One holds
            <input name="holds" placeholder="20 sq ft" defaultValue={word?.holds ?? ''} />
          </label>
        </div>
        <datalist id="counters">
          {counters.map((counter) => (
            <option key={counter} value={counter} />
          ))}
        </datalist>
        {wrong && (
          <p class="problem" role="alert">
            {wrong}
          </p>
        )}
        <SheetButtons does="Keep" dialog={dialog}>
          {id && (
            <button type="button" class="plain warn" onClick={() => void tried(forget(id))}>
              Forget it
            </button>
          )}
        </SheetButtons>
      </form>
    </dialog>
  );
}
