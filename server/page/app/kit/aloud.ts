export const canSpeak = () => 'speechSynthesis' in globalThis;

/**
 * Reads lines aloud, one after another; speaking again, or an empty list, stops what was being read.
 * @param after called once the last line has been spoken, or at once where nothing can speak
 */
export function readAloud(lines: readonly string[], after: () => void = () => undefined): void {
  if (!canSpeak()) {
    after();
    return;
  }
  speechSynthesis.cancel();
  for (const [k, line] of lines.entries()) {
    const utterance = new SpeechSynthesisUtterance(line);
    if (k === lines.length - 1) utterance.onend = after;
    speechSynthesis.speak(utterance);
  }
}
