/** @module The demo's pictures: drawn here, of no real part, as a camera with few shades of grey might see them. */
import { zlibSync } from 'fflate';
import { fourBytes, joined } from '../src/picture/bytes.ts';
import { cleanPicture, type PictureWithBytes } from '../src/picture/picture.ts';
import { pngChunk, pngFile } from '../src/picture/png.ts';

const width = 480;
const height = 320;

/** From 0, black, to 1, white, at a point across and down, each from 0 to 1. */
type Shade = (across: number, down: number) => number;

/** Sixteen shades of grey, two pixels a byte. */
const drawn = (shade: Shade): PictureWithBytes => {
  const grey = (x: number, y: number): number =>
    Math.max(0, Math.min(15, Math.round(shade(x / (width - 1), y / (height - 1)) * 15)));
  const rows = Array.from({ length: height }, (_, y) =>
    Uint8Array.from({ length: width / 2 + 1 }, (__, byte) =>
      byte === 0 ? 0 : (grey(2 * byte - 2, y) << 4) | grey(2 * byte - 1, y),
    ),
  );
  const file = pngFile([
    pngChunk('IHDR', joined([fourBytes(width), fourBytes(height), Uint8Array.of(4, 0, 0, 0, 0)])),
    pngChunk('IDAT', zlibSync(joined(rows), { level: 9 })),
    pngChunk('IEND', new Uint8Array()),
  ]);
  const clean = cleanPicture(file, 'demo picture');
  if (clean.kind === 'refused') throw new Error(clean.refusal.what);
  return clean.value;
};

const near = (a: number, b: number, within: number): number => Math.max(0, 1 - Math.abs(a - b) / within);

/** Hone marks crossing at a flat angle, as a bore shows them. */
const honed: Shade = (across, down) => {
  const up = Math.abs((((across * 14 + down * 30) % 1) + 1) % 1);
  const back = Math.abs((((across * 14 - down * 30) % 1) + 1) % 1);
  return 0.62 + 0.25 * Math.sin(across * Math.PI) - (up < 0.12 || back < 0.12 ? 0.12 : 0);
};

/** A bore, lit from above, with two scores down the thrust side. */
export const scoredBore: PictureWithBytes = drawn((across, down) => {
  const score = near(across, 0.56 + 0.01 * Math.sin(down * 9), 0.012) + 0.7 * near(across, 0.61, 0.007);
  const topEdge = down < 0.09 ? 0.35 : 0;
  return honed(across, down) - 0.55 * score * (down > 0.2 ? 1 : 0) - topEdge;
});

/** A shell laid flat: the lining bright, and dark where it is worn through over the loaded half. */
export const wornShell: PictureWithBytes = drawn((across, down) => {
  const [x, y] = [across - 0.5, (down - 1) * 0.9];
  const away = Math.hypot(x, y);
  if (away > 0.46 || away < 0.3) return 0.95 - 0.1 * down;
  const loaded = near(x, 0.02, 0.2) * near(away, 0.37, 0.06);
  const groove = near(away, 0.38, 0.012) * 0.35;
  return 0.75 - 0.5 * loaded - groove;
});
