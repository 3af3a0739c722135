import { useEffect, useState } from 'preact/hooks';
import type { CatalogueView } from '../../../http/api.ts';
import { catalogueCall, dropCatalogueCall, putCatalogueBackCall, sendCatalogueCall } from '../kit/calls.ts';
import { say, sync, wordsOf } from '../kit/model.ts';

/** The firm's own price list: what stands, and a new file in its place. A wrong file changes nothing and says which lines. */
export function PriceList() {
  const [kept, setKept] = useState<CatalogueView | 'unknown' | null>(null);
  const [wrong, setWrong] = useState('');
  useEffect(() => {
    // An answer that comes late must not hide a list that was sent meanwhile.
    const first = (view: CatalogueView | 'unknown') => setKept((known) => known ?? view);
    catalogueCall().then(first, () => first('unknown'));
  }, []);
  /** Puts a list in the place of the one that stands, or none; the one that stood can be put back. */
  const put = async (asked: Promise<CatalogueView>, words: string): Promise<void> => {
    const now = await asked;
    setKept(now);
    setWrong('');
    void sync();
    say(words, () => (now.before ? put(putCatalogueBackCall(), fromBefore) : put(dropCatalogueCall(), noneNow)));
  };
  const tried = (asked: Promise<CatalogueView>, words: string) =>
    put(asked, words).catch((error) => setWrong(wordsOf(error)));
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
            if (file) void tried(sendCatalogueCall(file), 'Price list kept.');
          }}
        />
      </label>
      {kept && kept !== 'unknown' && (
        <div class="row">
          {kept.before && (
            <button type="button" class="plain" onClick={() => void tried(putCatalogueBackCall(), fromBefore)}>
              Put back the one before: {countWords(kept.before)}
            </button>
          )}
          {kept.rows > 0 && (
            <button type="button" class="plain warn" onClick={() => void tried(dropCatalogueCall(), noneNow)}>
              Do without it
            </button>
          )}
        </div>
      )}
      {wrong && (
        <p class="problem" role="alert">
          {wrong}
        </p>
      )}
    </section>
  );
}

const noneNow = 'No price list now.';
const fromBefore = 'The list from before stands.';

const countWords = ({ rows, suppliers }: Pick<CatalogueView, 'rows' | 'suppliers'>) =>
  `${rows} ${rows === 1 ? 'line' : 'lines'} from ${suppliers.join(', ')}`;

function Standing({ kept }: { kept: CatalogueView | 'unknown' | null }) {
  if (!kept) return <p>Asking the server…</p>;
  if (kept === 'unknown') return <p>It is kept by the server, which does not answer now.</p>;
  if (!kept.rows) return <p>None yet. With one, the order shows what it costs and is counted in your own packs.</p>;
  return (
    <p>
      {countWords(kept)}. <a href="/api/catalogue/file.csv">Get it back as a file</a>
    </p>
  );
}
