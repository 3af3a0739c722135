import { useEffect, useState } from 'preact/hooks';
import type { CatalogueView } from '../../../http/api.ts';
import { catalogueCall, sendCatalogueCall } from '../kit/calls.ts';
import { say, wordsOf } from '../kit/model.ts';

/** The firm's own price list: what stands, and a new file in its place. A wrong file changes nothing and says which lines. */
export function PriceList() {
  const [kept, setKept] = useState<CatalogueView | 'unknown' | null>(null);
  const [wrong, setWrong] = useState('');
  useEffect(() => {
    catalogueCall().then(setKept, () => setKept('unknown'));
  }, []);
  const send = async (file: File) => {
    try {
      setKept(await sendCatalogueCall(file));
      setWrong('');
      say('Price list kept.');
    } catch (error) {
      setWrong(wordsOf(error));
    }
  };
  return (
    <section class="area">
      <h2>Price list</h2>
      <Standing kept={kept} />
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

function Standing({ kept }: { kept: CatalogueView | 'unknown' | null }) {
  if (!kept) return <p>Asking the server…</p>;
  if (kept === 'unknown') return <p>It is kept by the server, which does not answer now.</p>;
  if (!kept.rows) return <p>None yet. With one, the order shows what it costs and is counted in your own packs.</p>;
  return (
    <p>
      {kept.rows} {kept.rows === 1 ? 'line' : 'lines'} from {kept.suppliers.join(', ')}.{' '}
      <a href="/api/catalogue/file.csv">Get it back as a file</a>
    </p>
  );
}
