/** Every benchmark in one run: `npm run bench`. Each may also be run alone; each says what it measures. */
import './quantities.ts';
import './times.ts';
import './hearing.ts';
import './load.ts';
import './fold.ts';
import './prices.ts';
