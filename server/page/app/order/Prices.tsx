import type { JobView } from '../../../http/api.ts';
import { fractionWords } from '../kit/words.ts';

/** What the order comes to by the firm's price list: by counter, then line by line with how sure each match is. */
export function OrderPrices({ prices }: { prices: JobView['prices'] | undefined }) {
  if (!prices?.lines.length) return null;
  return (
    <section class="area">
      <h2>Cost by your price list</h2>
      <table class="sizes">
        <tbody>
          {prices.totals.map(({ kind, suppliers, cost, unpriced }) => (
            <tr key={kind}>
              <th scope="row">
                {kind}
                {suppliers.length > 0 && <small>{suppliers.join(', ')}</small>}
              </th>
              <td>
                <b>{cost}</b>
                {unpriced > 0 && <small>{unpriced} without a price</small>}
              </td>
            </tr>
          ))}
          <tr>
            <th scope="row">Together</th>
            <td>
              <b>{prices.total}</b>
            </td>
          </tr>
        </tbody>
      </table>
      <details>
        <summary class="plain">Line by line</summary>
        <ul class="plain-list">
          {prices.lines.map(({ line, item, match, quantity, cost, why }) => (
            <li key={line}>
              {item}: {cost ? <b>{cost}</b> : why}
              {match && (
                <small>
                  {quantity && `${fractionWords(quantity)} x `}
                  {match.item}
                  {match.size && `, ${match.size}`}, {match.supplier}, {Math.round(match.score * 100)} % alike
                </small>
              )}
            </li>
          ))}
        </ul>
      </details>
    </section>
  );
}
