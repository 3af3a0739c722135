/** One way to take what was heard. */
interface Heard {
  transcript: string;
  confidence: number;
}

/** What browsers that recognise speech offer; not in TypeScript's own list because few do. */
interface Recognition {
  continuous: boolean;
  interimResults: boolean;
  lang: string;
  onend: (() => void) | null;
  onerror: ((event: { error: string }) => void) | null;
  onresult: ((event: { results: ArrayLike<ArrayLike<Heard>> }) => void) | null;
  start(): void;
  stop(): void;
}
type Maker = new () => Recognition;

function maker(): Maker | undefined {
  const offered = globalThis as { SpeechRecognition?: Maker; webkitSpeechRecognition?: Maker };
  return offered.SpeechRecognition ?? offered.webkitSpeechRecognition;
}

export const canListen = () => maker() !== undefined;

/**
 * Listens until the returned function is called; `onWords` gets everything heard so far, again and again.
 * @param onRefused called once with the reason, in words, where the browser will not go on listening
 */
export function listen(onWords: (words: string) => void, onRefused: (why: string) => void): () => void {
  const Made = maker();
  if (!Made) return () => undefined;
  const recognition = new Made();
  recognition.continuous = true;
  recognition.interimResults = true;
  recognition.lang = document.documentElement.lang;
  let over = false;
  // Each start begins a list of results of its own.
  let before = '';
  let since = '';
  // Phones end a silence by themselves; only a refusal ends the listening.
  recognition.onend = () => {
    if (over) return;
    before = wordsOf([before, since]);
    since = '';
    recognition.start();
  };
  recognition.onerror = ({ error }) => {
    if (over || error === 'no-speech') return;
    over = true;
    onRefused(refusals[error] ?? refused);
  };
  recognition.onresult = ({ results }) => {
    since = heardIn(Array.from(results, (result) => result[0]));
    onWords(wordsOf([before, since]));
  };
  recognition.start();
  return () => {
    over = true;
    // What was heard comes once more, as final words, after the end.
    recognition.onresult = null;
    recognition.stop();
  };
}

const refusals: Record<string, string> = {
  network: 'Listening needs signal.',
  'audio-capture': 'No microphone answers.',
};
const refused = 'This browser may not listen.';

const wordsOf = (parts: readonly string[]) =>
  parts
    .map((part) => part.trim())
    .filter(Boolean)
    .join(' ');

/**
 * Some phones hand over each partial hearing as a result of its own that looks final, with a confidence of nought, and
 * the final one twice: what the next result begins with is left out.
 */
export function heardIn(results: readonly (Heard | undefined)[]): string {
  const said = results.map((result) => result?.transcript.trim() ?? '');
  return wordsOf(
    said.filter((words, k) => {
      const next = said[k + 1]?.toLowerCase();
      const partial = results[k]?.confidence === 0 && next?.startsWith(words.toLowerCase());
      return !partial && next !== words.toLowerCase();
    }),
  );
}
