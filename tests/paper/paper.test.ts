import { extractText, getDocumentProxy } from 'unpdf';
import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { type Entry, fold, type Job } from '../../server/jobs/index.ts';
import { shopping, walkThrough } from '../../server/paper/index.ts';

const JOB: Job = {
  id: 'job-mill-0001',
  name: 'Old mill, Łódź Street',
  zone: 'America/Chicago',
  start: '2026-05-11',
  areas: ['loft', 'stall'],
  builtYear: 1950,
  mailTo: [],
  mailAt: '17:30',
};

function stateAfter(...notes: string[]) {
  const entries = notes.map((text, k): Entry => {
    const at = `2026-05-12T10:${String(k).padStart(2, '0')}:00`;
    const { facts } = readNote(text, { saidAt: at, areas: JOB.areas });
    return {
      id: `n${k}`,
      jobId: JOB.id,
      at,
      by: 'Ada',
      source: { noteId: `n${k}`, start: 0, end: text.length },
      what: { kind: 'noteRead', facts, text, parser: '1' },
    };
  });
  return fold(JOB, entries, '2026-05-13T23:59:59');
}

async function textOf(pdf: Buffer): Promise<string[]> {
  const { text } = await extractText(await getDocumentProxy(new Uint8Array(pdf)), { mergePages: false });
  return text.map((page) => page.replace(/\s+/g, ' '));
}

describe('the walk-through on paper', () => {
  it('holds every item by area with its number, whose it is and when, and lines to sign, as text', async () => {
    const state = stateAfter(
      'In the loft the window latch is broken. Call the plumber about the drain by friday.',
      'In the stall the gate hinge is bent, replace it.',
    );
    const [page, ...more] = await textOf(await walkThrough(JOB, state));
    expect(more).toEqual([]);
    expect(page).toContain(JOB.name);
    expect(page).toContain('Walk-through on Wed May 13, 2026');
    expect(state.items.length).toBeGreaterThan(1);
    for (const item of state.items) expect(page).toContain(`${item.number} ${item.task}`);
    expect(page).toContain('due Fri May 15');
    expect(page).toMatch(
      /Loft.*Stall.*For the builder Day For the owner Day Walk-through, Old mill, Łódź Street Page 1 of 1/,
    );
  });

  it('leaves out what was dropped or signed off, and still shows what is done', async () => {
    const state = stateAfter('Loft window is cracked. Stall door is stuck. Loft ladder is loose.');
    const [first, second, third] = state.items;
    Object.assign(first!, { state: 'done', closedOn: '2026-05-13' });
    Object.assign(second!, { state: 'signed off' });
    Object.assign(third!, { state: 'dropped' });
    const [page] = await textOf(await walkThrough(JOB, state));
    expect(page).toContain(first!.task);
    expect(page).toContain('done Wed May 13');
    expect(page).not.toContain(second!.task);
    expect(page).not.toContain(third!.task);
  });

  it('goes through the areas as the job names them, what has none last', async () => {
    const state = stateAfter('Call the inspector.', 'Stall: the gate is bent.', 'Loft: the ladder is cracked.');
    const [page] = await textOf(await walkThrough(JOB, state));
    expect(page).toMatch(/Loft Accepted.*ladder.*Stall Accepted.*gate.*No area Accepted.*inspector/);
  });

  it('runs over several numbered pages, no line lost, none to sign on alone, each with its job and area', async () => {
    const state = stateAfter('Loft bracket is loose, tighten it.');
    const [one] = state.items;
    for (const count of [27, 28, 29, 30, 31, 32, 90]) {
      state.items = Array.from({ length: count }, (_, k) => ({
        ...one!,
        number: k + 1,
        task: `tighten bracket ${k + 100}`,
      }));
      const pages = await textOf(await walkThrough(JOB, state));
      const whole = pages.join(' ');
      for (const item of state.items) expect(whole).toContain(`${item.number} ${item.task}`);
      for (const [k, page] of pages.entries()) {
        expect(page).toMatch(k ? /^Loft, continued ?Accepted \d+ tighten/ : /Loft ?Accepted 1 tighten/);
        expect(page).toContain(`Walk-through, ${JOB.name} Page ${k + 1} of ${pages.length}`);
      }
      expect(pages.at(-1)).toContain('For the builder Day For the owner Day');
    }
  });

  it('says so where there is nothing', async () => {
    expect((await textOf(await walkThrough(JOB, stateAfter())))[0]).toContain('Nothing on the list.');
  });

  it('is the same file for the same list', async () => {
    const state = stateAfter('Loft window is cracked.');
    expect((await walkThrough(JOB, state)).equals(await walkThrough(JOB, state))).toBe(true);
  });
});

describe('the shopping list on paper', () => {
  it('holds each amount with its reason, by counter, and not what was bought', async () => {
    const state = stateAfter('Need two tubes of caulk, a box of deck screws and three sheets of drywall.');
    const [caulk, screws] = state.order;
    Object.assign(caulk!, { counter: 'paint' });
    Object.assign(screws!, { state: 'bought' });
    const [page] = await textOf(await shopping(JOB, state));
    expect(page).toMatch(/Paint 2 tubes caulk/);
    expect(page).toContain('3 sheets drywall');
    expect(page).not.toContain(screws!.item);
    expect((await textOf(await shopping(JOB, stateAfter())))[0]).toContain('Nothing to buy.');
  });
});
