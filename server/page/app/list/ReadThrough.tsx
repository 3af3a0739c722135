import { useEffect, useState } from 'preact/hooks';
import type { Item } from '../../../jobs/types.ts';
import { readAloud } from '../kit/aloud.ts';
import { useModal, useShown } from '../kit/hooks.ts';
import { change, takeBack } from '../kit/model.ts';
import { itemNotes } from '../kit/words.ts';
import { canListen, listen } from '../talk/liveWords.ts';

/** The answer that what was heard ends with; "not done yet" and "isn't done" are none. */
export function answerIn(words: string): 'done' | 'next' | null {
  const said = /\b(done|next|skip)\W*$/i.exec(words)?.[1]?.toLowerCase();
  if (!said || NOT_DONE.test(words)) return null;
  return said === 'done' ? 'done' : 'next';
}
const NOT_DONE = /(?:\b(?:not|never|almost|nearly|half)|n['’]t)(?:\s+\w+){0,2}\s+done\W*$/i;

/** Hands full: each item is read aloud, and answered by a big button or, where the browser listens, by a word. */
export function ReadThrough({ items, today, onClose }: { items: readonly Item[]; today: string; onClose: () => void }) {
  const dialog = useModal();
  const { settings, said } = useShown();
  // The list as it was when reading began: ticking an item must not shift the one being read.
  const [lines] = useState(items);
  const [at, setAt] = useState(0);
  /** The place of the item that was answered last, where the answer was "done". */
  const [ticked, setTicked] = useState<number | null>(null);
  const [deaf, setDeaf] = useState('');
  const item = lines[at];

  const answer = (word: 'done' | 'next') => {
    const isDone = item !== undefined && word === 'done';
    if (isDone) void change({ kind: 'setState', item: item.key, state: 'done' }, `No. ${item.number} done.`);
    setTicked(isDone ? at : null);
    setAt(at + 1);
  };
  const goBack = () => {
    void takeBack();
    setTicked(null);
    setAt(at - 1);
  };

  const listens = settings.liveWords && canListen() && !deaf;
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
          const answered = answerIn(words);
          if (!answered) return;
          stop();
          answer(answered);
        }, setDeaf);
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
            <p role="status">
              {deaf ||
                (listens ? 'Say “done”, “next” or “skip”.' : 'Answers by voice: switch on live words in set-up.')}
            </p>
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
      <div class="row">
        {ticked === at - 1 && said?.undo && (
          <button type="button" class="plain" onClick={goBack}>
            Undo no. {lines[ticked]?.number}
          </button>
        )}
        <button type="button" class="plain" onClick={() => dialog.current?.close()}>
          Stop
        </button>
      </div>
    </dialog>
  );
}
