import { useEffect, useRef, useState } from 'preact/hooks';
import { canSpeak, readAloud } from './aloud.ts';

/** Reads lines aloud at a tap, and stops at another, or when the screen is left. */
export function ReadAloud({ lines, of }: { lines: readonly string[]; of?: string }) {
  const [reading, setReading] = useState(false);
  const still = useRef(false);
  still.current = reading;
  useEffect(() => () => void (still.current && readAloud([])), []);
  if (!canSpeak() || !lines.length) return null;
  const tap = () => {
    if (reading) return readAloud([]);
    setReading(true);
    readAloud(lines, () => setReading(false));
  };
  return (
    <button type="button" class="plain read" aria-pressed={reading} onClick={tap}>
      {reading ? 'Stop reading' : 'Read aloud'}
      {of && <span class="hidden"> {of}</span>}
    </button>
  );
}
