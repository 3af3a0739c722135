import type { ComputedWait } from '../takeoff/types.ts';
import { isLive } from './board.ts';
import type { EarlyPlan, Item } from './types.ts';

/** Work that is planned for a day on which it cannot be done yet: its wait ends later. */
export function earlyPlans(items: readonly Item[], waits: readonly ComputedWait[]): EarlyPlan[] {
  const out = new Map<string, EarlyPlan>();
  const add = (task: string, plannedOn: string, readyOn: string, waitingFor: string, item: number | null) => {
    if (plannedOn < readyOn) out.set(`${item ?? task}`, { task, plannedOn, readyOn, waitingFor, item });
  };
  for (const { task, due, readyOn, waitingFor, number, state } of items)
    if (isLive({ state }) && due && readyOn && waitingFor) add(task, due, readyOn, waitingFor, number);
  for (const { task, plannedOn, readyOn, waitingFor } of waits) {
    const item = items.find((i) => i.readyOn === readyOn && i.waitingFor === waitingFor);
    if (plannedOn && (!item || isLive(item)))
      add(item?.task ?? task, plannedOn, readyOn, waitingFor, item?.number ?? null);
  }
  return [...out.values()];
}
