import express, { type ErrorRequestHandler, type Express, type Request, type RequestHandler } from 'express';
import { rateLimit } from 'express-rate-limit';
import helmet from 'helmet';
import { z } from 'zod';
import { isLive } from '../jobs/live.ts';
import type { Job } from '../jobs/types.ts';
import { shopping, walkThrough } from '../paper/index.ts';
import type { Site } from '../site.ts';
import { takes } from '../voice/enclosures.ts';
import { CATALOGUE_LIMIT, catalogueRoutes } from './catalogueRoutes.ts';
import { PROBLEMS, problemOf, Refused } from './errors.ts';
import { FactShape } from './factShape.ts';
import { packedAnswers, packedFiles } from './packed.ts';
import { reckonRoutes } from './reckonRoutes.ts';
import { Day, Id, Local } from './shapes.ts';
import { wordsRoutes } from './words.ts';

const BODY_LIMIT = '768kb';
const NOTE_LIMIT = 256_000;
const ENCLOSURE_LIMIT = 40_000_000;

const zoneKnown = (zone: string) => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
};

const NewJob = z.object({
  name: z.string().trim().min(1).max(120),
  zone: z.string().refine(zoneKnown, 'an IANA time zone, as America/Chicago'),
  start: Day,
  areas: z.array(z.string().trim().min(1).max(60)).max(60),
  crew: z.array(z.string().trim().min(1).max(60)).max(60).optional(),
  builtYear: z.number().int().min(1600).max(2100).nullable(),
  mailTo: z.array(z.email()).max(20),
  mailAt: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time as 17:30'),
});
const NewNote = z.object({
  saidAt: Local,
  text: z.string(),
  by: z.string().max(60).nullish(),
  area: z.string().max(60).nullish(),
  recordingId: z.string().nullish(),
  photoIds: z.array(z.string()).optional(),
});
const State = z.enum(['open', 'waiting', 'done', 'signed off', 'dropped']);
const NewEntry = z.object({
  at: Local,
  by: z.string().max(60).nullish(),
  what: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('setState'), item: z.string(), state: State }),
    z.object({
      kind: z.literal('editItem'),
      item: z.string(),
      change: z.object({
        task: z.string().min(1).max(300).optional(),
        area: z.string().max(60).nullable().optional(),
        who: z.string().max(60).nullable().optional(),
        due: Day.nullable().optional(),
        readyOn: Day.nullable().optional(),
      }),
    }),
    z.object({ kind: z.literal('sameAs'), item: z.string(), as: z.string() }),
    z.object({ kind: z.literal('split'), item: z.string() }),
    z.object({
      kind: z.literal('setOrder'),
      line: z.string(),
      state: z.enum(['to buy', 'ordered', 'bought', 'have']).optional(),
      quantity: z.string().optional(),
      unit: z.string().optional(),
    }),
    z.object({
      kind: z.literal('correctFact'),
      noteId: z.string(),
      index: z.number().int().min(0),
      fact: FactShape.nullable(),
    }),
    z.object({ kind: z.literal('undo'), entry: z.string() }),
  ]),
});

/** Puts the routes on a site. `pageFolder` holds the built page. */
export function makeApp(site: Site, pageFolder: string, callsAMinute = 600): Express {
  const app = express();
  app.disable('x-powered-by');
  app.use(
    helmet({
      contentSecurityPolicy: {
        directives: {
          defaultSrc: ["'self'"],
          scriptSrc: ["'self'"],
          styleSrc: ["'self'"],
          imgSrc: ["'self'", 'data:', 'blob:'],
          mediaSrc: ["'self'", 'blob:'],
          connectSrc: ["'self'"],
          fontSrc: ["'self'"],
          objectSrc: ["'none'"],
          frameSrc: ["'self'"],
          frameAncestors: ["'self'"],
          baseUri: ["'none'"],
          formAction: ["'self'"],
          upgradeInsecureRequests: null,
        },
      },
      strictTransportSecurity: false,
    }),
  );
  app.use(
    '/api',
    rateLimit({
      windowMs: 60_000,
      limit: callsAMinute,
      standardHeaders: true,
      legacyHeaders: false,
      handler: () => {
        throw new Refused('too-many');
      },
    }),
  );
  app.use('/api', sameSite, packedAnswers);
  for (const kind of ['recordings', 'photos'] as const) {
    const path = `/api/jobs/:id/${kind}/:enclosureId`;
    app.put(path, express.raw({ type: () => true, limit: ENCLOSURE_LIMIT }), async (req, res) => {
      const job = await jobOf(site, req);
      const type = req.get('Content-Type') ?? '';
      if (!takes(kind, type) || !Buffer.isBuffer(req.body) || req.body.length === 0)
        throw new Refused('enclosure-kind', type);
      const fresh = await site.enclosures.put(job.id, kind, Id.parse(req.params.enclosureId), {
        type,
        bytes: req.body,
      });
      res.status(fresh ? 201 : 200).json({ ok: true });
    });
    app.get(path, async (req, res) => {
      const job = await jobOf(site, req);
      const kept = await site.enclosures.get(job.id, kind, Id.parse(req.params.enclosureId));
      if (!kept) throw new Refused('not-found');
      res.type(kept.type).set('X-Content-Type-Options', 'nosniff').send(kept.bytes);
    });
  }
  app.use('/api/catalogue', catalogueRoutes(site));
  app.use(express.json({ limit: BODY_LIMIT, type: 'application/json' }));

  app.get('/healthz', (_req, res) => {
    res.json({ ok: true, mode: 'local' });
  });
  app.use('/api/words', wordsRoutes(site));
  app.use('/api/reckon', reckonRoutes());
  app.get('/api/jobs', async (_req, res) => {
    const jobs = await site.store.jobs();
    res.json(await Promise.all(jobs.map((job) => brief(site, job))));
  });
  app.put('/api/jobs/:id', async (req, res) => {
    const id = Id.parse(req.params.id);
    const known = await site.store.job(id);
    const given = NewJob.parse(req.body);
    const job = { id, ...given, crew: given.crew ?? known?.crew ?? [] };
    await site.store.putJob(job);
    res.status(known ? 200 : 201).json(await brief(site, job));
  });
  app.get('/api/jobs/:id', async (req, res) => {
    const job = await jobOf(site, req);
    res.json(await site.view(job));
  });
  app.get('/api/jobs/:id/notes', async (req, res) => {
    res.json(await site.talk(await jobOf(site, req)));
  });
  app.put('/api/jobs/:id/notes/:noteId', async (req, res) => {
    const job = await jobOf(site, req);
    const note = NewNote.parse(req.body);
    checkText(note.text);
    const taken = await site.take(job, Id.parse(req.params.noteId), note);
    if (taken.taken === 'other') {
      res.status(409).json({
        ...problemOf(new Refused('note-other-words', `kept as ${taken.keptAs}`)),
        keptAs: taken.keptAs,
        reply: taken.reply,
      });
      return;
    }
    res.status(taken.taken === 'new' ? 201 : 200).json(taken.reply);
  });
  app.put('/api/jobs/:id/entries/:entryId', async (req, res) => {
    const job = await jobOf(site, req);
    const fresh = await site.put(job, Id.parse(req.params.entryId), NewEntry.parse(req.body));
    res.status(fresh ? 201 : 200).json(await site.view(job));
  });
  app.get('/api/jobs/:id/rereading', async (req, res) => {
    const { difference } = await site.rereading(await jobOf(site, req));
    res.json({ difference, reading: null });
  });
  app.post('/api/jobs/:id/rereading', async (req, res) => {
    res.json(await site.readAgain(await jobOf(site, req)));
  });
  app.delete('/api/jobs/:id/rereading/:reading', async (req, res) => {
    res.json(await site.takeReadingBack(await jobOf(site, req), req.params.reading));
  });
  for (const [name, written] of Object.entries({ 'walk-through': walkThrough, shopping }))
    app.get(`/api/jobs/:id/${name}.pdf`, async (req, res) => {
      const job = await jobOf(site, req);
      const file = `${name} ${site.today(job)}.pdf`;
      res
        .type('pdf')
        .set('Content-Disposition', `inline; filename="${file}"`)
        .send(await written(job, await site.state(job)));
    });
  app.get('/api/jobs/:id/summary', async (req, res) => {
    const job = await jobOf(site, req);
    res.json(await site.summary(job, Day.parse(req.query.day ?? site.today(job))));
  });
  app.get('/api/jobs/:id/summary.html', async (req, res) => {
    const job = await jobOf(site, req);
    const { html } = await site.summary(job, Day.parse(req.query.day ?? site.today(job)));
    // The mail carries its own styles, as mail must; nothing in it may run.
    res
      .set('Content-Security-Policy', "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'self'")
      .type('html')
      .send(html);
  });
  app.post('/api/jobs/:id/summary/send', async (req, res) => {
    const job = await jobOf(site, req);
    const sent = await site.send(job, z.object({ day: Day }).parse(req.body).day);
    if ('failed' in sent) throw new Refused('mail-failed', sent.failed);
    res.json(sent);
  });
  app.use(
    packedFiles(pageFolder),
    express.static(pageFolder, {
      index: 'index.html',
      setHeaders: (res) => res.setHeader('Cache-Control', 'no-cache'),
    }),
  );
  app.use(() => {
    throw new Refused('not-found');
  });
  app.use(answerError);
  return app;
}

async function jobOf(site: Site, req: Request): Promise<Job> {
  const job = await site.store.job(String(req.params.id));
  if (!job) throw new Refused('no-such-job');
  return job;
}

async function brief(site: Site, job: Job) {
  const state = await site.state(job);
  const last = (await site.store.notes(job.id)).at(-1);
  return {
    ...job,
    open: state.items.filter(isLive).length,
    toBuy: state.order.filter((l) => l.state === 'to buy').length,
    lastNoteAt: last?.saidAt ?? null,
  };
}

function checkText(text: string): void {
  if (!text.trim()) throw new Refused('note-empty');
  if (text.length > NOTE_LIMIT) throw new Refused('note-too-long');
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for.
  if (/[\u0000-\u0008\u000e-\u001f\ufffd]/.test(text)) throw new Refused('note-not-text');
}

/** Changes only from our own page: by Sec-Fetch-Site, else by Origin; a program without either is let in. */
const sameSite: RequestHandler = (req, _res, next) => {
  if (req.method === 'GET' || req.method === 'HEAD') return next();
  const site = req.get('Sec-Fetch-Site');
  const origin = req.get('Origin');
  if (
    site
      ? site !== 'same-origin'
      : origin !== undefined && (!URL.canParse(origin) || new URL(origin).host !== req.get('Host'))
  )
    throw new Refused('other-site');
  next();
};

const answerError: ErrorRequestHandler = (error, _req, res, _next) => {
  const refused = refusedOf(error);
  res.status(PROBLEMS[refused.code].status).json(problemOf(refused));
};

function refusedOf(error: unknown): Refused {
  if (error instanceof Refused) return error;
  if (error instanceof z.ZodError)
    return new Refused(
      'body-wrong',
      error.issues.map((i) => `${i.path.join('.') || 'value'}: ${i.message}`).join('; '),
    );
  const type = typeof error === 'object' && error !== null && 'type' in error ? String(error.type) : '';
  const limit = typeof error === 'object' && error !== null && 'limit' in error ? Number(error.limit) : 0;
  if (type === 'entity.too.large')
    return new Refused(
      limit === ENCLOSURE_LIMIT
        ? 'enclosure-too-big'
        : limit === CATALOGUE_LIMIT
          ? 'catalogue-too-big'
          : 'note-too-long',
    );
  if (type.startsWith('entity.') || type.startsWith('encoding.') || type.startsWith('charset.'))
    return new Refused('body-not-json');
  console.error(error);
  return new Refused('store-failed');
}
