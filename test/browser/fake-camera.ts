/** @module A camera for the browser that sees one QR code on a grey bench: a film of raw pictures (YUV4MPEG2). */
import { qrCode } from '../../src/drawing/qr-code.ts';

const width = 640;
const height = 480;
/** Pixels a module, as a tag held a hand's breadth before the lens. */
const each = 9;

/** The frames of a film; luminance alone, its colours grey. */
export const filmOf = (text: string, frames = 3): Uint8Array => {
  const code = qrCode(text);
  const luma = new Uint8Array(width * height).fill(120);
  const left = Math.floor((width - code.length * each) / 2);
  const top = Math.floor((height - code.length * each) / 2);
  for (let y = 0; y < code.length * each; y += 1)
    for (let x = 0; x < code.length * each; x += 1)
      luma[(top + y) * width + left + x] = code[Math.floor(y / each)]?.[Math.floor(x / each)] ? 25 : 225;
  const grey = new Uint8Array((width * height) / 2).fill(128);
  const frame = Buffer.concat([Buffer.from('FRAME\n'), luma, grey]);
  return Buffer.concat([
    Buffer.from(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420jpeg\n`),
    ...Array.from({ length: frames }, () => frame),
  ]);
};
