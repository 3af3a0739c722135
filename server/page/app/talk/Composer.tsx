import { useEffect, useRef, useState } from 'preact/hooks';
import { v7 as newId } from 'uuid';
import type { JobView } from '../../../http/api.ts';
import { unheardText } from '../../../voice/unheard.ts';
import { useShown } from '../kit/hooks.ts';
import { now, openJob, say, settle } from '../kit/model.ts';
import { sendNote } from '../kit/notes.ts';
import { canRecord } from '../kit/recorder.ts';
import { endRecording, layIn, startRecording, takeOut } from '../kit/tray.ts';
import { canListen, listen } from './liveWords.ts';
import { resized } from './photos.ts';
import { TranscriptSheet, type Written } from './TranscriptSheet.tsx';
import { Tray } from './Tray.tsx';
import { isTimed, longestNote, wordsIn } from './transcripts.ts';

/**
 * The box to talk into. It is never written to while it is used: a phone keyboard that dictates appends its partial
 * words again after every write. It is read when Send is tapped, and emptied then. It works before the job is here.
 */
export function Composer({ view }: { view: JobView | null }) {
  const { settings, started, tray, recorder } = useShown();
  const box = useRef<HTMLTextAreaElement>(null);
  const [written, setWritten] = useState<Written | null>(null);
  const [heard, setHeard] = useState<{ words: string; stop: () => void } | null>(null);

  // What was left unsent comes back, unless something is being said already.
  useEffect(() => {
    if (started && !box.current!.value) box.current!.value = settings.draft;
  }, [started]);

  // Not at every letter: an old phone draws the screen again each time.
  const pause = useRef<ReturnType<typeof setTimeout>>(undefined);
  const keepDraft = (words: string, after = 0) => {
    clearTimeout(pause.current);
    pause.current = setTimeout(() => void settle({ draft: words }), after);
  };
  // After the note is on its way into the store: what is cut off here is a draft still.
  const empty = () => {
    box.current!.value = '';
    keepDraft('');
  };
  /** The box's words, and behind them what was heard. */
  const wordsWith = (words = '') => [box.current!.value.trim(), words.trim()].filter(Boolean).join(' ');

  // Another screen is opened: what was heard so far is written down.
  const listening = useRef(heard);
  listening.current = heard;
  useEffect(
    () => () => {
      const { words, stop } = listening.current ?? {};
      stop?.();
      if (words) keepDraft(wordsWith(words));
    },
    [],
  );

  const send = async () => {
    if (!(await openJob())) {
      say('No job is open on this phone yet. Your words stay in the box.');
      return;
    }
    heard?.stop();
    await endRecording();
    const taken = now().tray;
    const text = wordsWith(heard?.words);
    if (!text && !taken.length) {
      say('Nothing said yet.');
      box.current!.focus();
      return;
    }
    if (isTimed(text) && !taken.length) {
      setWritten({ text, name: null, writtenAt: null });
      return;
    }
    setHeard(null);
    const sound = taken.some((one) => one.kind === 'recording');
    const sent = sendNote(text || (sound ? unheardText : 'Photo.'), { taken });
    empty();
    await sent;
  };

  const openFile = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    input.value = '';
    if (!file) return;
    const text = await wordsIn(file);
    if (!text.trim()) say('That file is empty.');
    else if (text.length > longestNote) say('That file is too long for one note. Cut it in parts.');
    else setWritten({ text, name: file.name, writtenAt: file.lastModified });
  };

  const addPhotos = async (input: HTMLInputElement) => {
    const files = [...(input.files ?? [])];
    input.value = '';
    const kept = await Promise.all(files.map(resized));
    await layIn(kept.flatMap((data) => (data ? { id: newId(), kind: 'photo' as const, data } : [])));
    if (kept.includes(null)) say('That file is no picture that this phone can open.');
  };

  const startListening = () => {
    const stop = listen(
      (words) => setHeard((h) => h && { ...h, words }),
      (why) => {
        // What was heard so far is taken over into the box.
        box.current!.value = wordsWith(listening.current?.words);
        keepDraft(box.current!.value);
        setHeard(null);
        say(`${why} Type it, or record the sound.`);
      },
    );
    setHeard({ words: '', stop });
  };

  const drop = async () => {
    const taken = await endRecording();
    if (taken) await takeOut(taken);
  };

  return (
    <>
      <form
        class="composer"
        // Until the page is at work, Enter must not send the words to nowhere.
        method="dialog"
        onSubmit={(e) => {
          e.preventDefault();
          void send();
        }}
      >
        <div class={recorder ? 'extras at-work' : 'extras'}>
          <label class={settings.area ? 'area-pick chosen' : 'area-pick'}>
            <span class="hidden">Area of the next note</span>
            <select value={settings.area} onChange={(e) => void settle({ area: e.currentTarget.value })}>
              <option value="">Area</option>
              {view?.job.areas.map((area) => (
                <option key={area}>{area}</option>
              ))}
            </select>
          </label>
          <label class="plain file">
            Photo
            <input
              type="file"
              accept="image/jpeg,image/png"
              multiple
              onChange={(e) => void addPhotos(e.currentTarget)}
            />
          </label>
          <label class="plain file">
            File<span class="hidden"> with talk</span>
            <input
              type="file"
              accept=".vtt,.srt,.txt,text/vtt,text/plain"
              onChange={(e) => void openFile(e.currentTarget)}
            />
          </label>
          {canRecord() && !tray.some((one) => one.kind === 'recording') && (
            <button
              type="button"
              class={recorder ? 'plain recording' : 'plain'}
              aria-pressed={recorder !== null}
              onClick={() => (recorder ? void send() : void startRecording())}
            >
              {recorder ? 'Stop, send' : 'Record'}
            </button>
          )}
          {recorder && (
            <button type="button" class="plain warn" onClick={() => void drop()}>
              Drop it
            </button>
          )}
          {settings.liveWords && canListen() && (
            <button
              type="button"
              class="plain"
              aria-pressed={heard !== null}
              onClick={() => {
                heard?.stop();
                if (heard) void send();
                else startListening();
              }}
            >
              {heard ? 'Stop, send' : 'Listen'}
            </button>
          )}
        </div>
        <Tray taken={tray} />
        {heard && <p class="heard">{heard.words || 'Listening…'}</p>}
        <div class="say">
          <label class="hidden" for="words">
            What happened
          </label>
          <textarea
            id="words"
            ref={box}
            rows={2}
            placeholder="What happened?"
            autocapitalize="sentences"
            enterkeyhint="send"
            onInput={(e) => keepDraft(e.currentTarget.value, 700)}
            onBlur={(e) => keepDraft(e.currentTarget.value)}
            onKeyDown={(e) => {
              if (e.key !== 'Enter' || e.shiftKey || e.isComposing) return;
              e.preventDefault();
              void send();
            }}
          />
          <button type="submit" class="primary">
            Send
          </button>
        </div>
      </form>
      {written && view && (
        <TranscriptSheet
          written={written}
          view={view}
          onSent={() => written.name === null && empty()}
          onClose={() => setWritten(null)}
        />
      )}
    </>
  );
}
