import type { ComputedWait } from '../takeoff/types.ts';
import { isLive } from './live.ts';
import type { EarlyPlan, Item } from './types.ts';

/** Work that is planned for a day on which it cannot be done yet, or for too early an hour of it: its wait ends later. */
export function earlyPlans(items: readonly Item[], waits: readonly ComputedWait[]): EarlyPlan[] {
  const out = new Map<string, EarlyPlan>();
  const add = (plan: EarlyPlan) => {
    if (plan.plannedOn < plan.readyOn || plan.readyAt) out.set(`${plan.item ?? plan.task}`, plan);
  };
  for (const { task, due, readyOn, waitingFor, number, state } of items)
    if (isLive({ state }) && due && readyOn && waitingFor)
      add({ task, plannedOn: due, readyOn, readyAt: null, waitingFor, item: number });
  for (const { task, plannedOn, plannedAt, readyOn, readyAt, waitingFor } of waits) {
    const item = items.find((i) => i.readyOn === readyOn && i.waitingFor === waitingFor);
    if (!plannedOn || (item && !isLive(item))) continue;
    const sameDay =
      plannedOn === readyOn &&
      plannedAt !== null &&
      readyAt !== null &&
      `${`${plannedAt}`.padStart(2, '0')}:00` < readyAt;
    add({
      task: item?.task ?? task,
      plannedOn,
      readyOn,
      readyAt: sameDay ? readyAt : null,
      waitingFor,
      item: item?.number ?? null,
    });
  }
  return [...out.values()];
}
