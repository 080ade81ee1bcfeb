/** @module Checks of the cleaner: whatever stands beside the picture goes, the picture and which way up it is stay. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawn, drawnJpeg, drawnLosslessWebp, drawnWebp } from '../../test/picture/drawn.ts';
import { drawnPng } from '../../test/picture/drawn-png.ts';
import { fourBytes, joined, lettersOf, sameBytes } from './bytes.ts';
import { exifMark, type Orientation, orientationAlone, orientationIn } from './orientation.ts';
import { checkPicture, cleanPicture, mostPictureBytes } from './picture.ts';
import { pngChunk, pngFile } from './png.ts';

const secret = lettersOf('52.1234N 4.5678E secret');

const holds = (bytes: Uint8Array, part: Uint8Array): boolean =>
  bytes.some((_, at) => sameBytes(bytes.subarray(at, at + part.length), part));

const cleaned = (bytes: Uint8Array) => {
  const clean = cleanPicture(bytes, 'picture');
  if (clean.kind === 'refused') throw new Error(clean.refusal.what);
  return clean.value;
};

/** Data of applications and remarks after the first segment of a JPEG. */
const withSegments = (marked: readonly (readonly [number, Uint8Array])[], behind: Uint8Array): Uint8Array => {
  const first = 4 + ((drawnJpeg[4] ?? 0) * 256 + (drawnJpeg[5] ?? 0));
  return joined([
    drawnJpeg.subarray(0, first),
    ...marked.map(([marker, body]) =>
      joined([Uint8Array.of(0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 0xff), body]),
    ),
    drawnJpeg.subarray(first),
    behind,
  ]);
};

/** Chunks behind the header of a PNG. */
const withChunks = (chunks: readonly Uint8Array[], behind: Uint8Array): Uint8Array => {
  const png = drawnPng();
  const header = 8 + 12 + 13;
  return joined([png.subarray(0, header), ...chunks, png.subarray(header), behind]);
};

/** Chunks at the end of a WebP. */
const withRiffChunks = (
  webp: Uint8Array,
  chunks: readonly (readonly [string, Uint8Array])[],
  behind: Uint8Array,
): Uint8Array => {
  const body = joined([
    webp.subarray(8),
    ...chunks.map(([name, data]) =>
      joined([lettersOf(name), fourBytes(data.length, true), data, new Uint8Array(data.length % 2)]),
    ),
  ]);
  return joined([lettersOf('RIFF'), fourBytes(body.length, true), body, behind]);
};

/** Words about the picture, with the secret among them. */
const told = fc
  .tuple(fc.uint8Array({ maxLength: 40 }), fc.uint8Array({ maxLength: 40 }))
  .map(([before, after]) => joined([before, secret, after]));
const behind = fc.constantFrom(new Uint8Array(), secret);
const otherSegment = fc.tuple(
  fc.constantFrom(0xe0, 0xe1, 0xe2, 0xe3, 0xed, 0xee, 0xef, 0xfe),
  fc.oneof(
    told,
    told.map((words) => joined([exifMark, words])),
    told.map((words) => joined([lettersOf('JFXX\0'), words])),
    told.map((words) => joined([lettersOf('MPF\0'), words])),
    told.map((words) => joined([lettersOf('Photoshop 3.0\0'), words])),
    told.map((words) => joined([lettersOf('http://ns.adobe.com/xap/1.0/\0'), words])),
  ),
);
const otherChunk = fc
  .tuple(fc.constantFrom('tEXt', 'zTXt', 'iTXt', 'eXIf', 'tIME', 'prVt', 'acTL'), told)
  .map(([name, body]) => pngChunk(name, body));
const otherRiff = fc.tuple(fc.constantFrom('EXIF', 'XMP ', 'ABCD'), told);

const withWords: fc.Arbitrary<Uint8Array> = fc.oneof(
  fc.tuple(fc.array(otherSegment, { maxLength: 4 }), behind).map(([all, end]) => withSegments(all, end)),
  fc.tuple(fc.array(otherChunk, { maxLength: 4 }), behind).map(([all, end]) => withChunks(all, end)),
  fc
    .tuple(fc.constantFrom(drawnWebp, drawnLosslessWebp), fc.array(otherRiff, { maxLength: 4 }), behind)
    .map(([webp, all, end]) => withRiffChunks(webp, all, end)),
);

const orientations: readonly Orientation[] = [2, 3, 4, 5, 6, 7, 8];

describe('a picture that is cleaned', () => {
  it('holds nothing of what stood beside it, and is then the picture as it was drawn', () => {
    const alone = Object.values(drawn).map((file) => cleaned(file).picture.hash);
    fc.assert(
      fc.property(withWords, (file) => {
        const { bytes, picture } = cleaned(file);
        expect(holds(bytes, secret)).toBe(false);
        expect(picture).toMatchObject({ width: 48, height: 32, bytes: bytes.length });
        expect(alone).toContain(picture.hash);
      }),
    );
  });

  it('stays as it is when it is cleaned again, and may then be kept', () => {
    fc.assert(
      fc.property(withWords, (file) => {
        const once = cleaned(file);
        expect(sameBytes(cleaned(once.bytes).bytes, once.bytes)).toBe(true);
        expect(checkPicture(once.picture.hash, once.bytes).kind).toBe('answer');
      }),
    );
  });

  it.each(orientations)('keeps which way up it is held: %i', (orientation) => {
    const camera = orientationAlone(orientation);
    const turned = orientation >= 5 ? { width: 32, height: 48 } : { width: 48, height: 32 };
    for (const file of [
      withSegments([[0xe1, joined([exifMark, camera])]], new Uint8Array()),
      withChunks([pngChunk('eXIf', camera)], new Uint8Array()),
      withRiffChunks(drawnWebp, [['EXIF', camera]], new Uint8Array()),
      withRiffChunks(drawnLosslessWebp, [['EXIF', joined([exifMark, camera])]], new Uint8Array()),
    ]) {
      const { bytes, picture } = cleaned(file);
      expect(picture).toMatchObject(turned);
      expect(holds(bytes, camera)).toBe(true);
      expect(sameBytes(cleaned(bytes).bytes, bytes)).toBe(true);
    }
  });

  it('is told what it is by its first bytes, whatever the file is called', () => {
    expect(Object.values(drawn).map((file) => cleaned(file).picture.mediaType)).toEqual([
      'image/jpeg',
      'image/png',
      'image/webp',
      'image/webp',
    ]);
  });
});

describe('the orientation that a camera wrote', () => {
  it('is read in both byte orders', () => {
    const small = Uint8Array.of(
      ...lettersOf('II*\0'),
      8,
      0,
      0,
      0,
      1,
      0,
      0x12,
      1,
      3,
      0,
      1,
      0,
      0,
      0,
      6,
      0,
      0,
      0,
    );
    expect(orientationIn(small)).toBe(6);
    expect(orientationIn(orientationAlone(8))).toBe(8);
  });

  it('is 1 where nothing can be read, and nothing is ever thrown', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 60 }), (bytes) => {
        expect(orientationIn(joined([lettersOf('MM\0*'), bytes]))).toBeGreaterThanOrEqual(1);
        expect(orientationIn(bytes)).toBeLessThanOrEqual(8);
      }),
    );
    expect(orientationIn(new Uint8Array())).toBe(1);
  });
});

describe('a file that is no picture to be kept', () => {
  const why = (bytes: Uint8Array) => {
    const clean = cleanPicture(bytes, 'picture');
    return clean.kind === 'refused' ? clean.refusal.what : 'cleaned';
  };

  it('is refused where it is of another kind, a drawing that can hold a program among them', () => {
    for (const text of [
      '',
      'GIF89a',
      'BM',
      '<svg xmlns="http://www.w3.org/2000/svg"><script>1</script></svg>',
    ])
      expect(why(lettersOf(text))).toBe('this is no picture that can be kept');
  });

  it('is refused or cleaned wherever it is cut off or changed, and nothing is ever thrown', () => {
    const files = Object.values(drawn);
    for (const file of files)
      for (let length = 12; length < file.length - 1; length += 7)
        expect(why(file.subarray(0, length))).not.toBe('cleaned');
    fc.assert(
      fc.property(
        fc.constantFrom(...files),
        fc.array(fc.tuple(fc.nat(400), fc.nat(255)), { maxLength: 6 }),
        (file, changes) => {
          const bytes = Uint8Array.from(file);
          for (const [at, byte] of changes) bytes[at] = byte;
          expect(why(bytes)).not.toBe('');
        },
      ),
    );
  });

  it('is refused where it moves', () => {
    expect(why(withRiffChunks(drawnWebp, [['ANIM', new Uint8Array(6)]], new Uint8Array()))).toBe(
      'this is a moving picture',
    );
  });

  it('is refused where it is too large', () => {
    const large = pngChunk('IDAT', new Uint8Array(mostPictureBytes));
    expect(why(withChunks([large], new Uint8Array()))).toBe('the picture has 4.1 MB');
    const header = joined([fourBytes(20_000), fourBytes(2), Uint8Array.of(8, 0, 0, 0, 0)]);
    const wide = pngFile([
      pngChunk('IHDR', header),
      pngChunk('IDAT', Uint8Array.of(0)),
      pngChunk('IEND', new Uint8Array()),
    ]);
    expect(why(wide)).toBe('the picture is 20000 × 2 pixels');
  });
});

describe('bytes that are to lie under a hash', () => {
  it('are refused where they are others, or tell more than the picture', () => {
    const { bytes, picture } = cleaned(drawnPng());
    expect(checkPicture(picture.hash, drawnPng(1))).toMatchObject({
      refusal: { what: 'these are not the bytes of this picture' },
    });
    expect(
      checkPicture(picture.hash, withChunks([pngChunk('tEXt', secret)], new Uint8Array())),
    ).toMatchObject({
      refusal: { what: expect.stringContaining('tells more than the picture') },
    });
    expect(checkPicture(picture.hash, bytes)).toMatchObject({ value: { picture } });
  });

  it('have the hash that FIPS 180-4 gives them', async () => {
    const { bytes, picture } = cleaned(drawnJpeg);
    // source: SHA-256 of this platform's own cryptography
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', Uint8Array.from(bytes)));
    expect(picture.hash).toBe([...digest].map((byte) => byte.toString(16).padStart(2, '0')).join(''));
  });
});
