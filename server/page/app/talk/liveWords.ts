/** What browsers that recognise speech offer; not in TypeScript's own list because few do. */
interface Recognition {
  continuous: boolean;
  interimResults: boolean;
  lang: string;
  onend: (() => void) | null;
  onerror: ((event: { error: string }) => void) | null;
  onresult: ((event: { results: ArrayLike<ArrayLike<{ transcript: string }>> }) => void) | null;
  start(): void;
  stop(): void;
}
type Maker = new () => Recognition;

function maker(): Maker | undefined {
  const offered = globalThis as { SpeechRecognition?: Maker; webkitSpeechRecognition?: Maker };
  return offered.SpeechRecognition ?? offered.webkitSpeechRecognition;
}

export const canListen = () => maker() !== undefined;

/** Listens until the returned function is called; `onWords` gets everything heard so far, again and again. */
export function listen(onWords: (words: string) => void): () => void {
  const Made = maker();
  if (!Made) return () => undefined;
  const recognition = new Made();
  recognition.continuous = true;
  recognition.interimResults = true;
  recognition.lang = document.documentElement.lang;
  let over = false;
  // Phones end a silence by themselves; only a refusal ends the listening.
  recognition.onend = () => {
    if (!over) recognition.start();
  };
  recognition.onerror = ({ error }) => {
    if (error === 'not-allowed' || error === 'service-not-allowed') over = true;
  };
  recognition.onresult = ({ results }) => onWords(Array.from(results, (r) => r[0]?.transcript ?? '').join(' '));
  recognition.start();
  return () => {
    over = true;
    // What was heard comes once more, as final words, after the end.
    recognition.onresult = null;
    recognition.stop();
  };
}
