/**
 * @module Pictures that carry a place, cleaned, and looked through by an independent reader of such data.
 * source: ExifTool (libimage-exiftool-perl), which writes the data here and reads what is left of them.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cleanPicture } from '../../src/picture/picture.ts';
import { drawn } from '../picture/drawn.ts';
import { ask, lacking } from './program.ts';

const missing = lacking('exiftool');

/** What may be left: of the file, the picture, its colours and which way up it is held. */
const harmless = /^(SourceFile|ExifTool|System|File|JFIF|PNG|RIFF|ICC[-_]|Adobe|Composite|APP14)/;

describe.skipIf(missing)(`a picture that carries a place (needs exiftool; ${missing ?? 'here'})`, () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'endfloat-picture-'));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  const tags = (path: string): Readonly<Record<string, unknown>> =>
    (JSON.parse(ask('exiftool', ['-json', '-a', '-u', '-G1', '-n', path])) as Record<string, unknown>[])[0] ??
    {};
  for (const [ending, bytes] of Object.entries(drawn))
    it(`of the kind ${ending} loses it and every other word, and keeps which way up it is`, () => {
      const path = join(folder, `found.${ending}`);
      const clean = join(folder, `clean.${ending}`);
      writeFileSync(path, bytes);
      ask('exiftool', [
        '-overwrite_original',
        '-n',
        '-GPSLatitude=52.370216',
        '-GPSLatitudeRef=N',
        '-GPSLongitude=4.895168',
        '-GPSLongitudeRef=E',
        '-XMP:GPSLatitude=52.370216',
        '-XMP:City=Harbour Town',
        '-EXIF:Orientation=6',
        '-EXIF:Make=Invented',
        '-EXIF:DateTimeOriginal=2026:03:02 08:00:00',
        '-EXIF:SerialNumber=424242',
        '-Comment=taken behind the shed',
        ...(ending === 'jpg' ? ['-IPTC:City=Harbour Town', '-IPTC:Caption-Abstract=the shed'] : []),
        path,
      ]);
      const before = tags(path);
      expect(
        Object.keys(before).filter((name) => /GPS(Latitude|Longitude)$/.test(name)).length,
      ).toBeGreaterThan(2);

      const cleaned = cleanPicture(new Uint8Array(readFileSync(path)), path);
      if (cleaned.kind === 'refused') throw new Error(cleaned.refusal.what);
      writeFileSync(clean, cleaned.value.bytes);
      const after = tags(clean);
      const left = Object.keys(after).filter((name) => !harmless.test(name));
      expect(left.filter((name) => !name.startsWith('IFD0:'))).toEqual([]);
      // The directory of the camera holds the orientation, as it was, and nothing else.
      expect(left).toEqual(['IFD0:Orientation']);
      expect(after['IFD0:Orientation']).toBe(6);
      expect(Object.keys(after).filter((name) => /GPS|City|Comment|Date.*Original|Make$/.test(name))).toEqual(
        [],
      );
      expect(cleaned.value.picture).toMatchObject({ width: 32, height: 48 });
      // ExifTool finds the file whole.
      expect(after['ExifTool:Warning'] ?? after['ExifTool:Error']).toBeUndefined();
    });
});
