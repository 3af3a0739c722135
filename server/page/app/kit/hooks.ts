import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { hush, now, type Shown, watch } from './model.ts';

/** What the screens show, drawn again at each change. */
export function useShown(): Shown {
  const [, draw] = useState(0);
  // At once: what the phone kept may come before an effect that waits for the first picture.
  useLayoutEffect(() => watch(() => draw((n) => n + 1)), []);
  return now();
}

const screens = ['talk', 'list', 'order', 'trip', 'day', 'setup', 'reckon', 'fit'] as const;
export type Screen = (typeof screens)[number];

export const screenOf = (hash: string): Screen => screens.find((s) => `#${s}` === hash) ?? 'talk';

/** The screen named in the address, so that the phone's own back key works. */
export function useScreen(): Screen {
  const [screen, setScreen] = useState(screenOf(location.hash));
  useEffect(() => {
    const follow = () => {
      scrollTo(0, 0);
      if (!now().said?.undo) hush();
      setScreen(screenOf(location.hash));
    };
    addEventListener('hashchange', follow);
    // A tab may have been tapped between the first drawing and now.
    setScreen(screenOf(location.hash));
    return () => removeEventListener('hashchange', follow);
  }, []);
  return screen;
}

/** Opens a modal dialog as it appears; the browser keeps the focus inside and gives it back. */
export function useModal() {
  const ref = useRef<HTMLDialogElement>(null);
  useEffect(() => ref.current?.showModal(), []);
  return ref;
}
