import { useState } from 'preact/hooks';
import type { TaughtWord } from '../../../http/api.ts';
import { useShown } from '../kit/hooks.ts';
import { WordSheet } from './WordSheet.tsx';

/** What this firm calls things, beside the words of the trade. */
export function Words() {
  const { words } = useShown();
  const [opened, setOpened] = useState<TaughtWord | 'new' | null>(null);
  return (
    <section class="area">
      <h2>Words of yours</h2>
      {!words.length && (
        <p>
          None yet. The trade’s own words are known; teach what only you call so, and what a box or bag of it holds.
        </p>
      )}
      <ul class="words-taught">
        {words.map((word) => (
          <li key={word.id}>
            <button type="button" class="plain" onClick={() => setOpened(word)}>
              <b>{word.name}</b>
              {word.also?.length ? `, also ${word.also.join(', ')}` : ''}
              {word.holds ? `, ${word.holds} a ${word.soldBy?.[0]}` : ''}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" class="plain" onClick={() => setOpened('new')}>
        Teach a word
      </button>
      {opened && <WordSheet word={opened === 'new' ? null : opened} onClose={() => setOpened(null)} />}
    </section>
  );
}
