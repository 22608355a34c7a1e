/** Photos of kept recipes and of bakes: made small before they come here, and never sent anywhere. */
import type { Store } from '../db.ts';
import { Photo } from '../records.ts';

export const photoOfRecipe = (id: string): string => `recipe:${id}`;
export const photoOfBake = (id: string): string => `bake:${id}`;

/** Null when there is none, or it cannot be read. @throws the storage layer's error. */
export async function getPhoto(store: Store, id: string): Promise<Photo | null> {
  const read = Photo.safeParse(await store.photos.get(id));
  return read.success ? read.data : null;
}

/** Keeps a photo in place of the one before. @throws the storage layer's error; nothing is changed then. */
export async function savePhoto(store: Store, photo: Photo): Promise<void> {
  await store.transaction('rw', store.photos, () => store.photos.put(Photo.parse(photo)));
}

/** @throws the storage layer's error; nothing is changed then. */
export async function deletePhoto(store: Store, id: string): Promise<void> {
  await store.transaction('rw', store.photos, () => store.photos.delete(id));
}

/** Small photos of these recipes, as far as there are any. @throws the storage layer's error. */
export async function smallPhotos(
  store: Store,
  recipeIds: readonly string[],
): Promise<Record<string, string>> {
  const rows: unknown[] = await store.photos.bulkGet(recipeIds.map(photoOfRecipe));
  return Object.fromEntries(
    rows.flatMap((row, at) => {
      const read = Photo.safeParse(row);
      const id = recipeIds[at];
      return read.success && id !== undefined ? [[id, read.data.small] as const] : [];
    }),
  );
}
