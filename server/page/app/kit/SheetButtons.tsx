import type { ComponentChildren } from 'preact';
import type { useModal } from './hooks.ts';

/** The buttons at the foot of a sheet's form: what it does, leaving all as it was, and whatever else it offers. */
export function SheetButtons({
  does,
  leaves = 'Leave it',
  dialog,
  children,
}: {
  does: string;
  leaves?: string;
  dialog: ReturnType<typeof useModal>;
  children?: ComponentChildren;
}) {
  return (
    <div class="row">
      <button type="submit" class="primary">
        {does}
      </button>
      <button type="button" class="plain" onClick={() => dialog.current?.close()}>
        {leaves}
      </button>
      {children}
    </div>
  );
}
