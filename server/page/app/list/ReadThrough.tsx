import { useEffect, useState } from 'preact/hooks';
import type { Item } from '../../../jobs/types.ts';
import { readAloud } from '../kit/aloud.ts';
import { useModal, useShown } from '../kit/hooks.ts';
import { change } from '../kit/model.ts';
import { itemNotes } from '../kit/words.ts';
import { canListen, listen } from '../talk/liveWords.ts';

/** Hands full: each item is read aloud, and answered by a big button or, where the browser listens, by a word. */
export function ReadThrough({ items, today, onClose }: { items: readonly Item[]; today: string; onClose: () => void }) {
  const dialog = useModal();
  const { settings } = useShown();
  // The list as it was when reading began: ticking an item must not shift the one being read.
  const [lines] = useState(items);
  const [at, setAt] = useState(0);
  const item = lines[at];

  const answer = (word: 'done' | 'next') => {
    if (item && word === 'done')
      void change({ kind: 'setState', item: item.key, state: 'done' }, `No. ${item.number} done.`);
    setAt(at + 1);
  };

  const listens = settings.liveWords && canListen();
  useEffect(() => {
    let stop = () => {};
    let left = false;
    readAloud(
      item
        ? [`Number ${item.number}. ${[item.task, item.area, ...itemNotes(item, today)].filter(Boolean).join(', ')}`]
        : ['That was all.'],
      // Not before, or it would hear the phone read "done" out of a task.
      (finished) => {
        if (!finished || !item || left || !listens) return;
        stop = listen((words) => {
          const said = /\b(done|next|skip)\W*$/i.exec(words)?.[1]?.toLowerCase();
          if (!said) return;
          stop();
          answer(said === 'done' ? 'done' : 'next');
        });
      },
    );
    return () => {
      left = true;
      stop();
    };
  }, [at]);

  return (
    <dialog
      ref={dialog}
      class="sheet"
      aria-labelledby="read-title"
      onClose={() => {
        readAloud([]);
        onClose();
      }}
    >
      {item ? (
        <>
          <p>
            {at + 1} of {lines.length}
          </p>
          <h2 id="read-title">
            {item.number}. {item.task}
          </h2>
          <p class="task-notes">
            {[item.area ?? 'no area', ...itemNotes(item, today)].map((note) => (
              <span key={note}>{note}</span>
            ))}
          </p>
          {canListen() && (
            <p>{listens ? 'Say “done”, “next” or “skip”.' : 'Answers by voice: switch on live words in set-up.'}</p>
          )}
          <div class="row">
            <button type="button" class="primary" onClick={() => answer('done')}>
              Done
            </button>
            <button type="button" class="primary second" onClick={() => answer('next')}>
              Next
            </button>
          </div>
        </>
      ) : (
        <h2 id="read-title">That was all</h2>
      )}
      <button type="button" class="plain" onClick={() => dialog.current?.close()}>
        Stop
      </button>
    </dialog>
  );
}
