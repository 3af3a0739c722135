import type { JobView } from '../../../http/api.ts';
import { perhapsDoneBy } from '../../../jobs/list/perhapsDone.ts';
import type { Item, ItemState } from '../../../jobs/types.ts';
import { clockOf, dayWords } from '../kit/clock.ts';
import { useModal, useShown } from '../kit/hooks.ts';
import { change } from '../kit/model.ts';
import { SheetButtons } from '../kit/SheetButtons.tsx';
import { isClosed, itemNotes, stateWord } from '../kit/words.ts';
import { Enclosures } from '../talk/Enclosures.tsx';
import { SameAs } from './SameAs.tsx';

/** One item: its history with the words, and everything that a hand may change about it. */
export function ItemSheet({ item, view, onClose }: { item: Item; view: JobView; onClose: () => void }) {
  const dialog = useModal();
  const { today } = view;
  const { talks, parcels } = useShown();
  const photoIds = talks.filter((t) => item.history.some((h) => h.noteId === t.id)).flatMap((t) => t.photoIds);
  const setState = (state: ItemState) => {
    void change({ kind: 'setState', item: item.key, state }, `No. ${item.number} ${state}.`);
    dialog.current?.close();
  };
  const edit = (form: FormData) => {
    const text = (name: string) => String(form.get(name) ?? '').trim() || null;
    const wanted = {
      task: text('task') ?? item.task,
      area: text('area'),
      who: text('who'),
      due: text('due'),
      readyOn: text('readyOn'),
    };
    const changed = Object.fromEntries(
      Object.entries(wanted).filter(([name, value]) => item[name as keyof typeof wanted] !== value),
    );
    if (Object.keys(changed).length)
      void change({ kind: 'editItem', item: item.key, change: changed }, `No. ${item.number} changed.`);
    const as = text('as');
    if (as) void change({ kind: 'sameAs', item: item.key, as }, `No. ${item.number} joined to another.`);
    dialog.current?.close();
  };
  return (
    <dialog ref={dialog} class="sheet" aria-labelledby="item-title" onClose={onClose}>
      <h2 id="item-title">
        {item.number}. {item.task}
      </h2>
      <p class="task-notes">
        <i>{stateWord(item, today)}</i>
        {[item.area ?? 'no area', ...itemNotes(item, today)].map((note) => (
          <span key={note}>{note}</span>
        ))}
      </p>
      <Enclosures jobId={view.job.id} photoIds={photoIds} recordingId={null} parcels={parcels} />
      {item.problem && <p class="problem">Found: {item.problem}</p>}
      <div class="row">
        {!isClosed(item) ? (
          <>
            {item.state === 'unsure' ? (
              <button type="button" class="primary" onClick={() => setState('open')}>
                Keep it
              </button>
            ) : (
              <button type="button" class="primary" onClick={() => setState('done')}>
                Done
              </button>
            )}
            {perhapsDoneBy(item) !== null && (
              <button type="button" class="plain" onClick={() => setState('open')}>
                Still to do
              </button>
            )}
            <button type="button" class="plain warn" onClick={() => setState('dropped')}>
              Drop it
            </button>
          </>
        ) : (
          <>
            {item.state === 'done' && (
              <button type="button" class="primary" onClick={() => setState('signed off')}>
                Sign off
              </button>
            )}
            <button type="button" class="plain" onClick={() => setState('open')}>
              Open again
            </button>
          </>
        )}
      </div>
      <h3>How it came about</h3>
      <ol class="history">
        {item.history.map((event) => (
          <li key={`${event.entry}-${event.what}`}>
            <span>
              {dayWords(event.at, today)} {clockOf(event.at)}
              {event.by && `, ${event.by}`}: {event.what}
            </span>
            {event.words && <q>{event.words}</q>}
            {event.noteId === null && (
              <button
                type="button"
                class="plain"
                onClick={() => {
                  void change({ kind: 'undo', entry: event.entry }, 'Taken back.');
                  dialog.current?.close();
                }}
              >
                Take this back
              </button>
            )}
          </li>
        ))}
      </ol>
      <form
        onSubmit={(e) => {
          e.preventDefault();
          edit(new FormData(e.currentTarget));
        }}
      >
        <h3>Put it right</h3>
        <label>
          To do
          <input name="task" defaultValue={item.task} />
        </label>
        <label>
          Area
          <input name="area" list="item-areas" defaultValue={item.area ?? ''} />
        </label>
        <datalist id="item-areas">
          {view.job.areas.map((area) => (
            <option key={area} value={area} />
          ))}
        </datalist>
        <label>
          Who (empty: me)
          <input name="who" defaultValue={item.who ?? ''} />
        </label>
        <div class="row">
          <label>
            Due
            <input type="date" name="due" defaultValue={item.due ?? ''} />
          </label>
          <label>
            Ready from
            <input type="date" name="readyOn" defaultValue={item.readyOn ?? ''} />
          </label>
        </div>
        <SameAs item={item} items={view.state.items} />
        <SheetButtons does="Keep" leaves="Close" dialog={dialog} />
      </form>
    </dialog>
  );
}
