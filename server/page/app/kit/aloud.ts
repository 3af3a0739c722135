import { spoken } from './spoken.ts';

export const canSpeak = () => 'speechSynthesis' in globalThis;

let over: (finished: boolean) => void = () => undefined;

/**
 * Reads lines aloud, one after another; speaking again, or an empty list, stops what was being read.
 * @param onOver called once: `true` when the last line has been spoken, or at once where nothing can speak; `false` when it was cut off
 */
export function readAloud(lines: readonly string[], onOver: (finished: boolean) => void = () => undefined): void {
  const cutOff = over;
  over = onOver;
  cutOff(false);
  if (!canSpeak() || !lines.length) {
    finish(onOver);
    return;
  }
  speechSynthesis.cancel();
  for (const [k, line] of lines.entries()) {
    const utterance = new SpeechSynthesisUtterance(spoken(line));
    if (k === lines.length - 1) utterance.onend = () => finish(onOver);
    speechSynthesis.speak(utterance);
  }
}

/** A line that was cut off may still say that it ended: only what is being read now is over. */
function finish(reading: typeof over): void {
  if (over !== reading) return;
  over = () => undefined;
  if (canSpeak()) speechSynthesis.cancel();
  reading(true);
}
