/** @module Parts of a packed file, unpacked no further than a bound: a small file may hold gigabytes of nothing. */
import { Unzip, UnzipInflate } from 'fflate';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';

/** Bytes. A sheet with all the readings of a twenty-cylinder engine unpacks to less than one megabyte. */
const mostUnpacked = 64 * 1024 * 1024;
const mostEntries = 2000;
/** Unpacked at most a thousandfold, so that one piece never comes to more than some 16 MB. */
const piece = 16 * 1024;

const tooLarge = refuse(
  'it unpacks to more than any table of an engine',
  '',
  'copy the rows that are meant into a new workbook and save that',
);

const damaged = refuse('the file is damaged, or not a workbook', '', 'save it again, or give it as CSV');

const joined = (chunks: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
};

/** The parts of a ZIP archive that are asked for by name; those that are not in it are left out. */
export const unpack = (
  bytes: Uint8Array,
  wanted: (name: string) => boolean,
): Answer<ReadonlyMap<string, Uint8Array>> => {
  const parts = new Map<string, Uint8Array[]>();
  let unpacked = 0;
  let entries = 0;
  let broken = false;
  const unzip = new Unzip((file) => {
    entries += 1;
    if (!wanted(file.name) || parts.has(file.name)) return;
    const chunks: Uint8Array[] = [];
    parts.set(file.name, chunks);
    file.ondata = (error, chunk) => {
      if (error) broken = true;
      else if (unpacked <= mostUnpacked) {
        unpacked += chunk.length;
        chunks.push(chunk);
      }
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  try {
    for (let at = 0; at < bytes.length; at += piece) {
      unzip.push(bytes.subarray(at, at + piece), at + piece >= bytes.length);
      if (unpacked > mostUnpacked || entries > mostEntries) return tooLarge;
      if (broken) return damaged;
    }
  } catch {
    return damaged;
  }
  return answer(new Map([...parts].map(([name, chunks]) => [name, joined(chunks)])));
};
