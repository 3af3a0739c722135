import { expect, it } from 'vitest';
import { JOB } from './house.ts';
import { holdPhone, house, openScreen, page, soon, unsent } from './phone.ts';

holdPhone();

/**
 * A camera's note inside a JPEG: turned by a quarter (orientation 6), and a latitude. Laid out after the Exif standard
 * (CIPA DC-008, 4.5 and 4.6): marker, length, `Exif`, then a TIFF header and directories, big-endian here.
 */
function withCameraNote(jpeg: Buffer): Buffer {
  const entry = (tag: number, type: number, count: number, value: number, short = false) => {
    const row = Buffer.alloc(12);
    row.writeUInt16BE(tag, 0);
    row.writeUInt16BE(type, 2);
    row.writeUInt32BE(count, 4);
    if (short) row.writeUInt16BE(value, 8);
    else row.writeUInt32BE(value, 8);
    return row;
  };
  const directory = (...rows: Buffer[]) => {
    const count = Buffer.alloc(2);
    count.writeUInt16BE(rows.length);
    return Buffer.concat([count, ...rows, Buffer.alloc(4)]);
  };
  const [header, gpsAt, latitudeAt] = [8, 8 + 2 + 24 + 4, 8 + 2 + 24 + 4 + 2 + 24 + 4];
  const main = directory(entry(0x0112, 3, 1, 6, true), entry(0x8825, 4, 1, gpsAt));
  const gps = directory(entry(1, 2, 2, 0x4e000000), entry(2, 5, 3, latitudeAt));
  const latitude = Buffer.alloc(24);
  for (const [k, n] of [41, 1, 52, 1, 7, 1].entries()) latitude.writeUInt32BE(n, k * 4);
  const tiff = Buffer.concat([Buffer.from('MM\0*\0\0\0\x08', 'latin1'), main, gps, latitude]);
  expect(tiff.length).toBe(latitudeAt + 24);
  expect(header).toBe(tiff.indexOf(main));
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  const marker = Buffer.from([0xff, 0xe1, 0, 0]);
  marker.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), marker, body, jpeg.subarray(2)]);
}

it('sends a photo upright, at most 1600 px long, without the place that the camera wrote into it, and shows it on the item', async () => {
  await openScreen('talk');
  // Left half red, right half blue, 2000 by 1000, as the sensor saw it.
  const drawn = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(2000, 1000);
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = 'red';
    pen.fillRect(0, 0, 1000, 1000);
    pen.fillStyle = 'blue';
    pen.fillRect(1000, 0, 1000, 1000);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
  const buffer = withCameraNote(Buffer.from(drawn));
  await page.setInputFiles('input[accept*=jpeg]', { name: 'wall.jpg', mimeType: 'image/jpeg', buffer });
  await page.waitForSelector('.tray img');
  await page.fill('#words', 'The hall wall is cracked.');
  await page.click('.composer .primary');
  // None is unsent before the note is in the phone's store either, so the note itself is waited for first.
  const photoIds = async () => (await house.store.notes(JOB.id)).at(-1)!.photoIds;
  await soon(async () => (await photoIds()).length).toBe(1);
  await soon(unsent).toBe('0');

  const [photoId] = await photoIds();
  const answer = await fetch(`${house.url}/api/jobs/${JOB.id}/photos/${photoId}`);
  expect(answer.status).toBe(200);
  const kept = Buffer.from(await answer.arrayBuffer());
  expect(buffer.includes('Exif')).toBe(true);
  expect(kept.includes('Exif')).toBe(false);
  // Turned by a quarter to the right, red is on top.
  const seen = await page.evaluate(
    async (bytes) => {
      const picture = await createImageBitmap(new Blob([new Uint8Array(bytes)]), { imageOrientation: 'none' });
      const pen = new OffscreenCanvas(picture.width, picture.height).getContext('2d')!;
      pen.drawImage(picture, 0, 0);
      const at = (y: number) => [...pen.getImageData(picture.width / 2, y, 1, 1).data].map((n) => Math.round(n / 255));
      return { size: [picture.width, picture.height], top: at(100), bottom: at(picture.height - 100) };
    },
    [...kept],
  );
  expect(seen).toEqual({ size: [800, 1600], top: [1, 0, 0, 1], bottom: [0, 0, 1, 1] });

  // And the item that its note opened shows it.
  await page.click('a[href="#list"]');
  await page.locator('.task', { hasText: 'hall wall' }).click();
  const img = page.locator('dialog .photo img');
  await soon(() => img.evaluate((el: HTMLImageElement) => el.naturalHeight)).toBe(1600);
});

it('shows a photo before it is sent, takes it out at a tap and puts it back at another', async () => {
  await openScreen('talk');
  const drawn = async (colour: string) => {
    const bytes = await page.evaluate(async (fill) => {
      const canvas = new OffscreenCanvas(40, 40);
      const pen = canvas.getContext('2d')!;
      pen.fillStyle = fill;
      pen.fillRect(0, 0, 40, 40);
      return [...new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer())];
    }, colour);
    return { name: `${colour}.jpg`, mimeType: 'image/jpeg', buffer: Buffer.from(bytes) };
  };
  await page.setInputFiles('input[accept*=jpeg]', [await drawn('red'), await drawn('blue')]);
  const tray = page.locator('.tray img');
  await soon(() => tray.count()).toBe(2);
  const redness = () =>
    tray.evaluateAll((pictures) =>
      pictures.map((picture) => {
        const pen = new OffscreenCanvas(1, 1).getContext('2d')!;
        pen.drawImage(picture as HTMLImageElement, 0, 0, 1, 1);
        const [red = 0, , blue = 0] = pen.getImageData(0, 0, 1, 1).data;
        return red > blue ? 'red' : 'blue';
      }),
    );
  await soon(redness).toEqual(['red', 'blue']);
  await page.getByRole('button', { name: 'Take out photo 1' }).click();
  await soon(redness).toEqual(['blue']);
  await page.getByRole('button', { name: 'Undo' }).click();
  await soon(redness).toEqual(['red', 'blue']);
  await page.getByRole('button', { name: 'Take out photo 2' }).click();
  await page.fill('#words', 'The hall wall is cracked.');
  await page.click('.composer .primary');
  const last = async () => (await house.store.notes(JOB.id)).at(-1);
  await soon(async () => (await last())?.text).toBe('The hall wall is cracked.');
  expect((await last())?.photoIds).toHaveLength(1);
  expect(await tray.count()).toBe(0);
});
