import type { JobView } from '../../../http/api.ts';

type Brought = JobView['bring']['tools'];

/** Tools and small parts for the ready items, each with the numbers that call for it. */
export function Bring({ bring }: { bring: JobView['bring'] | undefined }) {
  return (
    <>
      <Load title="Tools" things={bring?.tools ?? []} />
      <Load title="Small parts" things={bring?.parts ?? []} />
    </>
  );
}

function Load({ title, things }: { title: string; things: Brought }) {
  if (!things.length) return null;
  return (
    <section class="area">
      <h2>{title}</h2>
      <ul class="plain-list load">
        {things.map(({ what, items }) => (
          <li key={what}>
            {what} <small>No. {items.join(', ')}</small>
          </li>
        ))}
      </ul>
    </section>
  );
}
