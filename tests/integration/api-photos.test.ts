import { randomUUID } from 'node:crypto';
import { crc32, deflateSync } from 'node:zlib';
import { answerPhoto, PHOTO_BYTES_MAX } from '@quartermark/api/server';
import { connect } from '@quartermark/db';
import { sql } from 'drizzle-orm';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { cookieOf, type Home, home, PASSWORD, refused } from '../support/api-house.ts';
import { signUpMember } from '../support/api-stranger.ts';

let at: Home;
let strangerCookie: string;
beforeAll(async () => {
  at = await home('api photos');
  const email = 'stranger@elsewhere.example';
  await signUpMember(at, { email });
  strangerCookie = cookieOf(await at.post('/sign-in/email', { email, password: PASSWORD }));
});
afterAll(() => at.close());

const picture = (width = 640, height = 480) =>
  sharp({ create: { width, height, channels: 3, background: '#a05030' } });

/** What a camera writes beside the picture, as its bytes show it. */
const TRACES = ['Exif', 'Somebody', '52.5', 'ns.adobe.com/xap', 'ICC_PROFILE'];
const XMP =
  '<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/">' +
  '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description ' +
  'xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="52.5"/></rdf:RDF></x:xmpmeta>' +
  '<?xpacket end="w"?>';

type Sent = { cookie?: string; type?: string; garageId?: string; photoId?: string };

/** A request as the route hands it on. */
async function send(body: Uint8Array | ReadableStream, sent: Sent = {}) {
  const { cookie = at.cookie, type = 'image/jpeg' } = sent;
  const { garageId = at.garageId, photoId = randomUUID() } = sent;
  const request = new Request('http://127.0.0.1:3000/api/photo', {
    method: 'POST',
    headers: { cookie, 'content-type': type },
    body,
    duplex: 'half',
  } as RequestInit);
  const response = await answerPhoto(at.api.createContext(request), request, { garageId, photoId });
  const answer = (await response.json()) as { message?: string; width?: number };
  return { status: response.status, ...answer, photoId };
}

async function fetchPhoto(photoId: string, query = '', cookie = at.cookie) {
  const request = new Request(`http://127.0.0.1:3000/api/photo${query}`, { headers: { cookie } });
  const ctx = at.api.createContext(request);
  return answerPhoto(ctx, request, { garageId: at.garageId, photoId });
}

test('a photo is turned upright and loses place, camera and time; nothing of them is stored', async () => {
  const sent = await picture(640, 480)
    .withExif({
      IFD0: { Make: 'Somebody', Orientation: '6' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '52/1 31/1 0/1' },
    })
    .withMetadata({ orientation: 6 })
    .withXmp(XMP)
    .jpeg()
    .toBuffer();
  for (const trace of TRACES) expect(sent.includes(trace), trace).toBe(true);
  const { status, photoId } = await send(sent);
  expect(status).toBe(200);
  for (const query of ['', '?small=1']) {
    const response = await fetchPhoto(photoId, query);
    expect(response.headers.get('content-type')).toBe('image/jpeg');
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
    const bytes = Buffer.from(await response.arrayBuffer());
    const { exif, xmp, iptc, icc, width, height } = await sharp(bytes).metadata();
    expect([exif, xmp, iptc, icc]).toEqual([undefined, undefined, undefined, undefined]);
    for (const trace of TRACES) expect(bytes.includes(trace), trace).toBe(false);
    // orientation 6 is a quarter turn
    expect(height).toBeGreaterThan(width);
  }
});

test('a large photo is kept at 2560 px, its small one at 320', async () => {
  const { photoId, width } = await send(await picture(4000, 3000).jpeg().toBuffer());
  expect(width).toBe(2560);
  const small = await sharp(
    Buffer.from(await (await fetchPhoto(photoId, '?small=1')).arrayBuffer()),
  ).metadata();
  expect([small.width, small.height]).toEqual([320, 240]);
});

test('PNG and WebP are taken as well', async () => {
  expect((await send(await picture().png().toBuffer(), { type: 'image/png' })).status).toBe(200);
  expect((await send(await picture().webp().toBuffer(), { type: 'image/webp' })).status).toBe(200);
});

test.each([
  ['a GIF file', () => picture().gif().toBuffer()],
  ['a TIFF file', () => picture().tiff().toBuffer()],
  ['an AVIF file', () => picture(32, 32).avif().toBuffer()],
  ['a HEIC file', () => Promise.resolve(Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic'))],
  ['a PDF file', () => Promise.resolve(Buffer.from('%PDF-1.7 and so on'))],
  ['no photo', () => Promise.resolve(Buffer.from('a note that lost its way'))],
  ['empty', () => Promise.resolve(Buffer.alloc(0))],
  [
    'a drawing made of text',
    () =>
      Promise.resolve(
        Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'),
      ),
  ],
])('%s is refused by its content, with what to do, whatever type it claims', async (what, make) => {
  const { status, message } = await send(await make());
  expect(status).toBe(415);
  expect(message).toContain(`This is ${what}. Photos are taken as JPEG, PNG or WebP`);
});

test('a photo that was cut off on its way is refused, and nothing of it is kept', async () => {
  const whole = await picture(2000, 1500).jpeg().toBuffer();
  const { status, message, photoId } = await send(whole.subarray(0, whole.length / 3));
  expect(status).toBe(415);
  expect(message).toContain('it is damaged or was cut off on its way');
  expect((await fetchPhoto(photoId)).status).toBe(404);
});

test('a photo of 40 MB is refused before it is read whole', async () => {
  let given = 0;
  const chunk = new Uint8Array(1024 * 1024);
  const body = new ReadableStream({
    pull(controller) {
      given += chunk.length;
      if (given > 40 * chunk.length) controller.close();
      else controller.enqueue(chunk);
    },
  });
  const { status, message } = await send(body);
  expect(status).toBe(413);
  expect(message).toContain('A photo may have 12 MB');
  expect(given).toBeLessThan(PHOTO_BYTES_MAX + 4 * chunk.length);
});

/** A PNG of one colour, row after row: some hundred kilobytes that unfold into gigabytes. */
function bomb(width: number, height: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
    const frame = Buffer.alloc(8);
    frame.writeUInt32BE(data.length, 0);
    frame.writeUInt32BE(crc32(body), 4);
    return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)]);
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  // one bit a pixel, grey (ISO/IEC 15948, 11.2.1)
  head.set([1, 0, 0, 0, 0], 8);
  const rows = deflateSync(Buffer.alloc((Math.ceil(width / 8) + 1) * height));
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', head),
    chunk('IDAT', rows),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

test('a small file that would unfold into a huge picture is refused undecoded', async () => {
  const sent = bomb(30_000, 30_000);
  expect(sent.length).toBeLessThan(1024 * 1024);
  const before = process.memoryUsage.rss();
  const { status, message } = await send(sent, { type: 'image/png' });
  expect(status).toBe(413);
  expect(message).toContain('30000 x 30000 pixels');
  expect(process.memoryUsage.rss() - before).toBeLessThan(100 * 1024 * 1024);
  // the bomb is a picture that would open, if it were smaller
  expect((await send(bomb(300, 300), { type: 'image/png' })).status).toBe(200);
});

test('the same photo sent twice is kept once, and another under its id changes nothing', async () => {
  const first = await send(await picture(100, 100).jpeg().toBuffer());
  const { photoId } = first;
  const before = Buffer.from(await (await fetchPhoto(photoId)).arrayBuffer());
  const other = await picture(50, 60).jpeg().toBuffer();
  expect(await send(other, { photoId })).toEqual(first);
  expect(Buffer.from(await (await fetchPhoto(photoId)).arrayBuffer()).equals(before)).toBe(true);
});

test('the same photo sent twice at once is kept once, with one answer', async () => {
  const photoId = randomUUID();
  const bytes = await picture(90, 30).jpeg().toBuffer();
  const [one, two] = await Promise.all([send(bytes, { photoId }), send(bytes, { photoId })]);
  expect(one).toMatchObject({ status: 200, width: 90, height: 30 });
  expect(two).toEqual(one);
});

test('the id of another garage’s photo can be used in one’s own, and neither learns of the other', async () => {
  const { photoId } = await send(await picture(80, 40).jpeg().toBuffer());
  const mine = await at.caller(strangerCookie).garage.create({
    garageId: randomUUID(),
    commandId: randomUUID(),
    name: 'South shed',
    zone: 'Europe/Oslo',
    distanceUnit: 'km',
    volumeUnit: 'l',
  });
  const theirs = { cookie: strangerCookie, garageId: mine.id, photoId };
  const own = await send(await picture(20, 30).jpeg().toBuffer(), theirs);
  expect(own).toMatchObject({ status: 200, width: 20, height: 30 });
  const kept = await sharp(Buffer.from(await (await fetchPhoto(photoId)).arrayBuffer())).metadata();
  expect(kept.width).toBe(80);
});

test('a stranger, and who is signed out, learns nothing and leaves nothing', async () => {
  const bytes = await picture().jpeg().toBuffer();
  const { photoId } = await send(bytes);
  expect((await fetchPhoto(photoId, '', strangerCookie)).status).toBe(404);
  expect((await send(bytes, { cookie: strangerCookie })).status).toBe(404);
  expect((await send(bytes, { cookie: '' })).status).toBe(401);
  expect((await send(bytes, { type: 'text/plain' })).status).toBe(415);
  // an id that cannot be one is that of no photo and of no garage
  expect((await fetchPhoto('1')).status).toBe(404);
  expect((await send(bytes, { garageId: '1' })).status).toBe(404);
});

test('without a garage no photo is visible at all', async () => {
  await send(await picture().jpeg().toBuffer());
  const db = connect(at.database.appUrl, { max: 1 });
  const rows = await db.orm.execute(sql`select id from photo`);
  await db.close();
  expect(rows.length).toBe(0);
});

test('an entry names photos that have arrived, and no others', async () => {
  const { photoId } = await send(await picture().jpeg().toBuffer());
  const finding = (photos: string[]) =>
    at.draft('finding', { what: 'Crack', severity: 'watch', photos } as never);
  await at.record(finding([photoId]));
  const refusal = await refused(at.record(finding([photoId, randomUUID()])));
  expect(refusal.field).toBe('entry.photos.1');
  expect(refusal.message).toContain('one of them has not arrived');
});
