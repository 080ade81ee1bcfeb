/** @module A printed label as it looks after some days on the bench: out of focus, grainy, with a greasy thumb on its code. */
import type { Page } from 'playwright-core';

export interface Spoiling {
  /** Standard deviation, mm. */
  readonly blur: number;
  /** Greatest change of a pixel, of 255. */
  readonly grain: number;
  /** Share of the code that a dark thumb covers. */
  readonly thumb: number;
  /** Whether the thumb keeps off the three corner marks by which a code is found at all. */
  readonly offCorners: boolean;
}

/** Where the code lies, mm. */
export interface CodeBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** The corner without a mark: the far one, 1 and 1, unless the label lies turned. */
  readonly bareCorner: readonly [number, number];
}

/**
 * @param picture   the label, PNG
 * @param perMm     pixels
 * @param seed      which thumb, which grain
 */
export const spoiled = async (
  page: Page,
  picture: Uint8Array,
  { perMm, box, seed, how }: { perMm: number; box: CodeBox; seed: number; how: Spoiling },
): Promise<Uint8Array> => {
  const url = await page.evaluate(
    async ({ source, perMm, box, seed, how }) => {
      const image = new Image();
      image.src = source;
      await image.decode();
      const canvas = document.createElement('canvas');
      canvas.width = image.width;
      canvas.height = image.height;
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('no canvas');
      // A generator of its own (Park and Miller), so that every run sees the same thumbs.
      let state = (seed * 7919 + 17) % 2147483647;
      const chance = () => {
        state = (state * 48271) % 2147483647;
        return state / 2147483647;
      };
      pen.fillStyle = '#fff';
      pen.fillRect(0, 0, canvas.width, canvas.height);
      pen.filter = how.blur > 0 ? `blur(${how.blur * perMm}px)` : 'none';
      pen.drawImage(image, 0, 0);
      if (how.thumb > 0) {
        const side = box.width * perMm;
        // An ellipse half as long again as wide.
        const across = Math.sqrt((how.thumb * side * side) / (Math.PI * 1.5));
        const down = across * 1.5;
        const least = how.offCorners ? 0.36 : 0;
        let [x, y] = [0.5, 0.5];
        do {
          x = chance();
          y = chance();
        } while (
          how.offCorners &&
          [
            [0, 0],
            [1, 0],
            [0, 1],
            [1, 1],
          ]
            .filter(([cx, cy]) => cx !== box.bareCorner[0] || cy !== box.bareCorner[1])
            .some(
              ([cx = 0, cy = 0]) =>
                Math.abs(x - cx) < least + across / side && Math.abs(y - cy) < least + down / side,
            )
        );
        pen.filter = 'blur(2px)';
        pen.fillStyle = 'rgb(40 34 28 / 92%)';
        pen.beginPath();
        pen.ellipse(box.x * perMm + x * side, box.y * perMm + y * side, across, down, 0, 0, 2 * Math.PI);
        pen.fill();
        pen.filter = 'none';
      }
      if (how.grain > 0) {
        const pixels = pen.getImageData(0, 0, canvas.width, canvas.height);
        for (let at = 0; at < pixels.data.length; at += 4) {
          const change = (chance() * 2 - 1) * how.grain;
          for (let of = at; of < at + 3; of += 1) pixels.data[of] = (pixels.data[of] ?? 0) + change;
        }
        pen.putImageData(pixels, 0, 0);
      }
      return canvas.toDataURL('image/png');
    },
    { source: `data:image/png;base64,${Buffer.from(picture).toString('base64')}`, perMm, box, seed, how },
  );
  return Buffer.from(url.slice(url.indexOf(',') + 1), 'base64');
};
