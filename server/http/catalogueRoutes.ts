import express, { Router } from 'express';
import type { Site } from '../site.ts';
import { Refused } from './errors.ts';

export const CATALOGUE_LIMIT = 4_000_000;

/** The firm's price list: PUT the file as the spreadsheet saved it, GET what stands, GET it back as a file, DELETE it, POST the one before back. */
export function catalogueRoutes(site: Site): Router {
  const routes = Router();
  routes.put('/', express.raw({ type: () => true, limit: CATALOGUE_LIMIT }), async (req, res) => {
    if (!Buffer.isBuffer(req.body) || req.body.length === 0) throw new Refused('catalogue-wrong', 'the file is empty');
    const kept = await site.keepCatalogue(textOf(req.body));
    if ('wrong' in kept) throw new Refused('catalogue-wrong', kept.wrong.join('; '));
    res.json(kept);
  });
  routes.get('/', async (_req, res) => {
    res.json(await site.catalogueView());
  });
  routes.delete('/', async (_req, res) => {
    res.json(await site.dropCatalogue());
  });
  routes.post('/before', async (_req, res) => {
    const kept = await site.putCatalogueBack();
    if (!kept) throw new Refused('not-found');
    res.json(kept);
  });
  routes.get('/file.csv', async (_req, res) => {
    const kept = await site.store.catalogue();
    if (!kept) throw new Refused('not-found');
    res.type('text/csv').attachment('price-list.csv').send(kept.text);
  });
  return routes;
}

/** UTF-8, else what an office program on Windows writes. */
function textOf(bytes: Buffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
