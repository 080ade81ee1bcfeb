/** @module Pictures over HTTP: how they come in, what is turned away, and that they come before what is said of them. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { booking } from '../../test/job/bench.ts';
import { drawn } from '../../test/picture/drawn.ts';
import { type Desk, eventsOf, openDesk, refusalOf } from '../../test/server/desk.ts';
import { joined, lettersOf } from '../picture/bytes.ts';
import { cleanPicture, type PictureWithBytes } from '../picture/picture.ts';
import { pngChunk } from '../picture/png.ts';

let desk: Desk;
beforeEach(async () => {
  desk = await openDesk();
});
afterEach(() => desk.close());

const clean = (bytes: Uint8Array): PictureWithBytes => {
  const picture = cleanPicture(bytes, 'picture');
  if (picture.kind === 'refused') throw new Error(picture.refusal.what);
  return picture.value;
};

const put = ({ picture, bytes }: PictureWithBytes, headers: Readonly<Record<string, string>> = {}) =>
  desk.put(`/api/pictures/${picture.hash}`, bytes, { 'content-type': picture.mediaType, ...headers });

describe('a picture', () => {
  it.each(Object.entries(drawn))(
    'of the kind %s is had again as it was put, as what it is',
    async (_, file) => {
      const whole = clean(file);
      expect((await put(whole)).status).toBe(201);
      expect((await put(whole)).status).toBe(201);
      const had = await desk.get(`/api/pictures/${whole.picture.hash}`);
      expect(new Uint8Array(await had.arrayBuffer())).toEqual(Uint8Array.from(whole.bytes));
      expect(had.headers.get('content-type')).toBe(whole.picture.mediaType);
      expect(had.headers.get('x-content-type-options')).toBe('nosniff');
      expect(had.headers.get('cache-control')).toBe('private, max-age=31536000, immutable');
      expect(had.headers.get('content-security-policy')).toContain("default-src 'none'; sandbox");
    },
  );

  it('that is not there is told so', async () => {
    const had = await desk.get(`/api/pictures/${'0'.repeat(64)}`);
    expect(had.status).toBe(404);
    expect(had.headers.get('cache-control')).toBe('no-store');
    expect((await refusalOf(had)).what).toBe('there is no such picture here');
  });

  it('is what its content is, whatever it is sent as', async () => {
    const jpeg = clean(drawn.jpg);
    await put(jpeg, { 'content-type': 'image/png' });
    const had = await desk.get(`/api/pictures/${jpeg.picture.hash}`);
    expect(had.headers.get('content-type')).toBe('image/jpeg');
  });

  it('is turned away where it could hold a program, is called something else, or is sent as another page’s', async () => {
    const svg = lettersOf('<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>');
    const path = `/api/pictures/${'0'.repeat(64)}`;
    expect((await desk.put(path, svg, { 'content-type': 'image/svg+xml' })).status).toBe(415);
    expect((await desk.put(path, svg, { 'content-type': 'image/png' })).status).toBe(422);
    expect((await desk.put(path, svg)).status).toBe(415);
    const png = clean(drawn.png);
    expect((await put(png, { origin: 'http://elsewhere.example' })).status).toBe(403);
    expect((await desk.get(`/api/pictures/${png.picture.hash}`)).status).toBe(404);
    // Nothing else may be sent as a picture.
    expect((await desk.post('/api/engine-types', {}, { 'content-type': 'image/png' })).status).toBe(415);
  });

  it('is turned away where it tells more than the picture, or is too large', async () => {
    const { picture, bytes } = clean(drawn.png);
    const told = joined([
      bytes.subarray(0, 33),
      pngChunk('tEXt', lettersOf('Comment\0behind the shed')),
      bytes.subarray(33),
    ]);
    const answer = await put({ picture, bytes: told });
    expect(answer.status).toBe(422);
    expect((await refusalOf(answer)).what).toContain('tells more than the picture');
    expect((await put({ picture, bytes: new Uint8Array(4_100_000) })).status).toBe(413);
  });

  it('comes before what is said of it', async () => {
    await desk.send(booking);
    const whole = clean(drawn.webp);
    const said = {
      kind: 'take picture',
      picture: whole.picture,
      of: { place: 'main.2' },
      says: 'a groove',
    } as const;
    const early = await desk.send(said);
    expect(early.status).toBe(422);
    expect(await refusalOf(early)).toMatchObject({
      what: 'the picture itself has not arrived',
      remedy: 'send the picture, then what is said of it',
    });
    await put(whole);
    const events = await eventsOf(await desk.send(said, 1));
    expect(events.map(({ fact }) => fact)).toMatchObject([{ ...said, kind: 'picture taken' }]);
  });
});
