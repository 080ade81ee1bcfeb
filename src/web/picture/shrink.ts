/** @module A picture from camera or file, drawn again as it is seen, at a size that shows what matters and travels. */
import { cleanPicture, type PictureWithBytes } from '../../picture/picture.ts';
import { type Answer, refuse } from '../../quantity/refusal.ts';

/** Pixels along the longer side: a score, a crack, a mark are still to be seen. */
const longest = 1600;

/** A picture should not be heavier than this, bytes; quality gives way first. */
const heaviest = 600_000;
const qualities = [0.82, 0.7, 0.55] as const;

const drawn = async (bitmap: ImageBitmap): Promise<Blob | null> => {
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const pen = canvas.getContext('2d');
  if (!pen) return null;
  // JPEG knows no clear glass: it becomes paper.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  let blob: Blob | null = null;
  for (const quality of qualities) {
    blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality));
    if (blob && blob.size <= heaviest) return blob;
  }
  return blob;
};

/** What is drawn again tells nothing beside the picture; the cleaner sees to it that it stays so. */
export const shrunk = async (file: File): Promise<Answer<PictureWithBytes>> => {
  try {
    const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
    const blob = await drawn(bitmap);
    bitmap.close();
    if (blob) return cleanPicture(new Uint8Array(await blob.arrayBuffer()), file.name);
  } catch {}
  return refuse('this browser cannot read the picture', file.name, 'give it as JPEG, PNG or WebP');
};
