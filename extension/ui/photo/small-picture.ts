/** A photo made small enough to keep: it never leaves the browser, and what the camera wrote into it goes. */

/** Longer side of what is kept, and of the one in lists, px. Own choice. */
const LARGE = 1200;
const SMALL = 112;
const QUALITY = 0.82;

/** Sides of a picture within a square, never larger than it is. */
export function fitted(wide: number, high: number, most: number): { wide: number; high: number } {
  const scale = Math.min(1, most / Math.max(wide, high, 1));
  return {
    wide: Math.max(1, Math.round(wide * scale)),
    high: Math.max(1, Math.round(high * scale)),
  };
}

function drawn(picture: ImageBitmap, most: number): string {
  const { wide, high } = fitted(picture.width, picture.height, most);
  const canvas = document.createElement('canvas');
  canvas.width = wide;
  canvas.height = high;
  const pen = canvas.getContext('2d');
  if (!pen) throw new Error('the browser draws no pictures');
  // What is clear in a picture would turn black.
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, wide, high);
  pen.drawImage(picture, 0, 0, wide, high);
  return canvas.toDataURL('image/jpeg', QUALITY);
}

/** The photo in both sizes, as addresses that hold it. @throws what the browser cannot read. */
export async function smallPicture(file: Blob): Promise<{ data: string; small: string }> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  try {
    return { data: drawn(picture, LARGE), small: drawn(picture, SMALL) };
  } finally {
    picture.close();
  }
}
