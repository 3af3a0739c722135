import { crc32, deflateSync } from 'node:zlib';

const ground = [11, 74, 67] as const;
const lime = [241, 237, 227] as const;

/** The mark: five strokes of a comb through wet plaster, bent once. Heights run over 0..1 of the square. */
const strokes = [0.22, 0.36, 0.5, 0.64, 0.78];

const bend = (x: number) => 0.05 * Math.sin(x * Math.PI * 2);

export function iconSvg(): string {
  const paths = strokes.map((y) => `M16 ${100 * y}C39 ${100 * y + 11} 61 ${100 * y - 11} 84 ${100 * y}`).join('');
  const colour = (c: readonly number[]) => `rgb(${c.join(',')})`;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" fill="${colour(ground)}"/><path d="${paths}" fill="none" stroke="${colour(lime)}" stroke-width="6" stroke-linecap="round"/></svg>`;
}

/** The same mark as a PNG of `side` pixels, for home screens that take no SVG. */
export function iconPng(side: number): Buffer {
  const rows = Buffer.alloc(side * (1 + side * 3));
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const u = (x + 0.5) / side;
      const v = (y + 0.5) / side;
      const along = (u - 0.16) / 0.68;
      const drawn = along > 0 && along < 1 && strokes.some((s) => Math.abs(v - s - bend(along)) < 0.03);
      rows.set(drawn ? lime : ground, y * (1 + side * 3) + 1 + x * 3);
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(side, 0);
  header.writeUInt32BE(side, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}
