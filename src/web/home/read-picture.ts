/** @module Reads the QR code in a picture: by the browser where it can, else by a reader that is fetched for it. */

interface Detector {
  readonly detect: (source: ImageData) => Promise<readonly { readonly rawValue: string }[]>;
}

type DetectorMaker = (new (options: {
  readonly formats: readonly string[];
}) => Detector) & {
  readonly getSupportedFormats: () => Promise<readonly string[]>;
};

const own = async (): Promise<Detector | undefined> => {
  const Made = (globalThis as { readonly BarcodeDetector?: DetectorMaker }).BarcodeDetector;
  if (Made === undefined) return undefined;
  try {
    return (await Made.getSupportedFormats()).includes('qr_code')
      ? new Made({ formats: ['qr_code'] })
      : undefined;
  } catch {
    return undefined;
  }
};

/** How long a picture may be looked at, milliseconds: one of many from a camera, or the only one. */
const patience = { camera: 60, file: 4000 };

let browsers: Promise<Detector | undefined> | undefined;

/** @returns its text; undefined where no code can be read in it */
export const readPicture = async (
  picture: ImageData,
  from: keyof typeof patience,
): Promise<string | undefined> => {
  browsers ??= own();
  const detector = await browsers;
  const [found] = (await detector?.detect(picture).catch(() => [])) ?? [];
  if (found !== undefined) return found.rawValue;
  const { decodeQR } = await import('qr/decode.js');
  try {
    return decodeQR(picture, {
      effort: from === 'file' ? Number.POSITIVE_INFINITY : 2,
      timeLimit: patience[from],
    });
  } catch {
    // It throws where it sees no code.
    return undefined;
  }
};

/** Larger pictures are drawn smaller: a code that fills a tenth of one is still read. */
const largest = 1600;

export const pixelsOf = (
  source: CanvasImageSource,
  { width, height }: { readonly width: number; readonly height: number },
): ImageData | undefined => {
  const scale = Math.min(1, largest / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  pen?.drawImage(source, 0, 0, canvas.width, canvas.height);
  return pen?.getImageData(0, 0, canvas.width, canvas.height);
};
