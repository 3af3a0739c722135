import { useEffect, useRef, useState } from 'preact/hooks';
import { v7 as newId } from 'uuid';
import type { JobView } from '../../../http/api.ts';
import { unheardText } from '../../../voice/unheard.ts';
import { useShown } from '../kit/hooks.ts';
import { hush, openJob, say, sendNote, settle } from '../kit/model.ts';
import { canListen, listen } from './liveWords.ts';
import { PhotoTray, type Taken } from './PhotoTray.tsx';
import { resized } from './photos.ts';
import { canRecord, type Recorder, record } from './recorder.ts';
import { TranscriptSheet, type Written } from './TranscriptSheet.tsx';
import { isTimed, longestNote, wordsIn } from './transcripts.ts';

/**
 * The box to talk into. It is never written to while it is used: a phone keyboard that dictates appends its partial
 * words again after every write. It is read when Send is tapped, and emptied then. It works before the job is here.
 */
export function Composer({ view }: { view: JobView | null }) {
  const { settings, started } = useShown();
  const box = useRef<HTMLTextAreaElement>(null);
  const [photos, setPhotos] = useState<Taken[]>([]);
  const [recorder, setRecorder] = useState<Recorder | null>(null);
  const [written, setWritten] = useState<Written | null>(null);
  const [heard, setHeard] = useState<{ words: string; stop: () => void } | null>(null);

  // What was left unsent comes back, unless something is being said already.
  useEffect(() => {
    if (started && !box.current!.value) box.current!.value = settings.draft;
  }, [started]);

  const empty = () => {
    box.current!.value = '';
    void settle({ draft: '' });
  };

  const send = async () => {
    if (!(await openJob())) {
      say('No job is open on this phone yet. Your words stay in the box.');
      return;
    }
    heard?.stop();
    const text = [box.current!.value.trim(), heard?.words.trim()].filter(Boolean).join(' ');
    const sound = recorder ? await recorder.stop() : null;
    if (!text && !photos.length && !sound) {
      say('Nothing said yet.');
      box.current!.focus();
      return;
    }
    if (isTimed(text) && !photos.length && !sound) {
      setWritten({ text, name: null, writtenAt: null });
      return;
    }
    empty();
    setPhotos([]);
    setRecorder(null);
    setHeard(null);
    await sendNote(text || (sound ? unheardText : 'Photo.'), { photos: photos.map((p) => p.data), sound });
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
    setPhotos((before) => [...before, ...kept.flatMap((data) => (data ? { id: newId(), data } : []))]);
    if (kept.includes(null)) say('That file is no picture that this phone can open.');
  };

  const takeOut = (photo: Taken) => {
    const before = photos;
    setPhotos(photos.filter((p) => p !== photo));
    say('Photo taken out.', async () => {
      setPhotos(before);
      hush();
    });
  };

  const startRecording = async () => {
    try {
      const jobId = await openJob();
      if (!jobId) return say('No job is open on this phone yet.');
      setRecorder(await record(jobId));
      say('Recording. Send keeps it with the note.');
    } catch {
      say('The microphone was not given. Type, or use the keyboard’s own dictation.');
    }
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
            File
            <input
              type="file"
              accept=".vtt,.srt,.txt,text/vtt,text/plain"
              onChange={(e) => void openFile(e.currentTarget)}
            />
          </label>
          {canRecord() && (
            <button
              type="button"
              class={recorder ? 'plain recording' : 'plain'}
              aria-pressed={recorder !== null}
              onClick={() => (recorder ? void send() : void startRecording())}
            >
              {recorder ? 'Stop, send' : 'Record'}
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
                else setHeard({ words: '', stop: listen((words) => setHeard((h) => h && { ...h, words })) });
              }}
            >
              {heard ? 'Stop, send' : 'Listen'}
            </button>
          )}
        </div>
        <PhotoTray photos={photos} onOut={takeOut} />
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
            onBlur={(e) => void settle({ draft: e.currentTarget.value })}
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
