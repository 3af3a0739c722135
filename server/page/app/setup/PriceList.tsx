import { useEffect, useState } from 'preact/hooks';
import type { CatalogueView } from '../../../http/api.ts';
import { catalogueCall, sendCatalogueCall } from '../kit/calls.ts';
import { say } from '../kit/model.ts';

/** The firm's own price list: what stands, and a new file in its place. A wrong file changes nothing and says which lines. */
export function PriceList() {
  const [kept, setKept] = useState<CatalogueView | null>(null);
  const [wrong, setWrong] = useState('');
  useEffect(() => {
    catalogueCall().then(setKept, () => setKept(null));
  }, []);
  const send = async (file: File) => {
    try {
      setKept(await sendCatalogueCall(file));
      setWrong('');
      say('Price list kept.');
    } catch (error) {
      setWrong(error instanceof Error ? error.message : 'Not sent. Try again where there is signal.');
    }
  };
  return (
    <section class="area">
      <h2>Price list</h2>
      <p>
        {kept?.rows
          ? `${kept.rows} ${kept.rows === 1 ? 'line' : 'lines'} from ${kept.suppliers.join(', ')}.`
          : 'None yet. With one, the order shows what it costs and is counted in your own packs.'}{' '}
        {kept?.rows ? <a href="/api/catalogue/file.csv">Get it back as a file</a> : null}
      </p>
      <label>
        A spreadsheet saved as CSV: item, size, unit, pack, price, supplier
        <input
          type="file"
          accept=".csv,text/csv"
          onChange={(e) => {
            const [file] = e.currentTarget.files ?? [];
            e.currentTarget.value = '';
            if (file) void send(file);
          }}
        />
      </label>
      {wrong && (
        <p class="problem" role="alert">
          {wrong}
        </p>
      )}
    </section>
  );
}
