/** A card as PNG, and the system's own sheet for sharing, where there is one. */
import { CARD } from './picture-card.ts';

/** Draws an SVG document to a PNG. @throws {Error} when the browser cannot. */
export async function pngOf(svg: string): Promise<Blob> {
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image(CARD.wide, CARD.high);
    image.src = url;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = CARD.wide;
    canvas.height = CARD.high;
    canvas.getContext('2d')?.drawImage(image, 0, 0, CARD.wide, CARD.high);
    return await new Promise<Blob>((done, failed) =>
      canvas.toBlob(
        (blob) => (blob === null ? failed(new Error('no picture came of it')) : done(blob)),
        'image/png',
      ),
    );
  } finally {
    URL.revokeObjectURL(url);
  }
}

export const canShare = (): boolean => typeof navigator.share === 'function';

/**
 * Hands a text, and a picture where the system takes one, to the share sheet. Resolves to false when the
 * user closed it. @throws what else went wrong.
 */
export async function shareOut(
  title: string,
  text: string,
  picture: File | null,
): Promise<boolean> {
  const files = picture !== null && navigator.canShare?.({ files: [picture] }) ? [picture] : null;
  try {
    await navigator.share({ title, text, ...(files ? { files } : {}) });
    return true;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return false;
    throw error;
  }
}
