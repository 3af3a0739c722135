import { existsSync, readdirSync } from 'node:fs';
import { gzip } from 'node:zlib';
import type { RequestHandler } from 'express';

/** The built page's files in their packed form, where the browser takes it: a phone on one bar loads a quarter of the bytes. */
export function packedFiles(folder: string): RequestHandler {
  const packed = new Set(existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith('.gz')) : []);
  return (req, res, next) => {
    const file = req.path === '/' ? 'index.html' : req.path.slice(1);
    if ((req.method === 'GET' || req.method === 'HEAD') && packed.has(`${file}.gz`)) {
      res.vary('Accept-Encoding');
      if (req.acceptsEncodings('gzip')) {
        res.type(file.slice(file.lastIndexOf('.') + 1)).set('Content-Encoding', 'gzip');
        req.url = `/${file}.gz`;
      }
    }
    next();
  };
}

/** Under this many characters packing gains nothing. */
const worthPacking = 2000;

/** Long answers packed: a job of some weeks is mostly words said again and again. */
export const packedAnswers: RequestHandler = (req, res, next) => {
  const plain = res.json.bind(res);
  res.json = (body) => {
    const text = JSON.stringify(body);
    if (text.length < worthPacking || !req.acceptsEncodings('gzip')) return plain(body);
    gzip(text, (error, bytes) => {
      if (error) plain(body);
      else res.type('json').vary('Accept-Encoding').set('Content-Encoding', 'gzip').send(bytes);
    });
    return res;
  };
  next();
};
