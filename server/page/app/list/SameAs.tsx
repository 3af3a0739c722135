import type { Item } from '../../../jobs/types.ts';

/** Says that an item is another one told again. */
export function SameAs({ item, items }: { item: Item; items: readonly Item[] }) {
  return (
    <label>
      Same as
      <select name="as">
        <option value="">nothing else</option>
        {items
          .filter((other) => other.key !== item.key)
          .map((other) => (
            <option key={other.key} value={other.key}>
              no. {other.number}, {other.task}
            </option>
          ))}
      </select>
    </label>
  );
}
