/** @module Readers of QR codes that are not the one that wrote them: zbar, in C, and ZXing's, in C++ compiled to WebAssembly. */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import { ask } from '../outside/program.ts';

export interface CodeReader {
  readonly name: string;
  /** The text of each picture (PNG); undefined where none is read. */
  readonly read: (pictures: readonly Uint8Array[]) => Promise<readonly (string | undefined)[]>;
}

/** source: ZXing-C++, by the package zxing-wasm */
export const zxing = (): CodeReader => {
  const file = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
  const bytes = readFileSync(file);
  prepareZXingModule({
    overrides: { wasmBinary: bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) },
  });
  return {
    name: 'ZXing-C++',
    read: (pictures) =>
      Promise.all(
        pictures.map(async (picture) => {
          const [found] = await readBarcodes(picture, { formats: ['QRCode'], tryHarder: true });
          return found?.isValid === true ? found.text : undefined;
        }),
      ),
  };
};

/** What it ends with where it sees no code. */
const nothingSeen = /^zbarimg ended with code 4:/;

/** source: zbarimg (zbar-tools) */
export const zbar = (folder: string): CodeReader => ({
  name: 'zbar',
  read: async (pictures) =>
    pictures.map((picture, at) => {
      const file = join(folder, `label-${at}.png`);
      writeFileSync(file, picture);
      try {
        return ask('zbarimg', ['--quiet', '--raw', '-Sdisable', '-Sqrcode.enable', file]).split('\n')[0];
      } catch (error) {
        if (error instanceof Error && nothingSeen.test(error.message)) return undefined;
        throw error;
      }
    }),
});
