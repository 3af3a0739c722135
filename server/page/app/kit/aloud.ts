export const canSpeak = () => 'speechSynthesis' in globalThis;

/** Reads lines aloud, one after another; speaking again, or an empty list, stops what was being read. */
export function readAloud(lines: readonly string[]): void {
  if (!canSpeak()) return;
  speechSynthesis.cancel();
  for (const line of lines) speechSynthesis.speak(new SpeechSynthesisUtterance(line));
}
