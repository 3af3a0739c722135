import type { Verdict } from '../../../takeoff/checks/verdict.ts';

/** Does it fit, is it allowed: what was measured against the limit, and whose limit that is. */
export function CheckLines({ checks }: { checks: readonly (Verdict & { item?: number | null })[] }) {
  return (
    <ul class="plain-list">
      {checks.map((check) => (
        <li
          key={`${check.of} ${check.item} ${check.figure}`}
          class={check.result === 'does not fit' ? 'problem' : undefined}
        >
          <strong>
            {check.of}: {check.result}.
          </strong>{' '}
          {check.result === 'cannot say' ? `Missing: ${check.missing}.` : `${check.figure} against ${check.limit}.`}{' '}
          {check.item && `No. ${check.item}. `}
          <small>{check.source}</small>
          {check.working && <small class="because">{check.working}</small>}
        </li>
      ))}
    </ul>
  );
}
