/** A photo of a dish or a bake: taken or chosen, made small, looked at, taken away. */

import { useEffect, useId, useState } from 'preact/hooks';
import type { Store } from '../../store/db.ts';
import { storageMessage } from '../../store/failure.ts';
import { deletePhoto, getPhoto, savePhoto } from '../../store/kept/photos.ts';
import type { Photo } from '../../store/records.ts';
import { FailureLine } from '../controls/failure-line.tsx';
import { say } from '../words/say.ts';
import { smallPicture } from './small-picture.ts';

interface Props {
  store: Store;
  /** Id of the photo: of a recipe or of a bake. */
  id: string;
  /** What is on it, for those who do not see it and to tell buttons apart. */
  of: string;
  onChanged?(): void;
}

export function PhotoPart({ store, id, of, onChanged }: Props) {
  const field = useId();
  const [photo, setPhoto] = useState<Photo | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    getPhoto(store, id).then(setPhoto, (error) => setFailure(storageMessage(error)));
  }, [id]);
  const attempt = async (job: () => Promise<Photo | null>) => {
    try {
      setPhoto(await job());
      setFailure(null);
      onChanged?.();
    } catch (error) {
      setFailure(storageMessage(error));
    }
  };
  const choose = async (file: File) => {
    const made = await smallPicture(file).catch(() => null);
    if (made === null) return setFailure(say('noPhoto'));
    await attempt(async () => {
      const next = { id, ...made, addedAt: Date.now() };
      await savePhoto(store, next);
      return next;
    });
  };
  return (
    <div class="photo-part">
      {photo && <img class="photo" src={photo.data} alt={say('photoOf', of)} />}
      <div class="acts">
        <label class="button bare" for={field}>
          {say(photo ? 'anotherPhoto' : 'addPhoto')}
          <span class="hidden">: {of}</span>
        </label>
        <input
          id={field}
          class="hidden"
          type="file"
          accept="image/*"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            currentTarget.value = '';
            if (file) void choose(file);
          }}
        />
        {photo && (
          <button
            type="button"
            class="button bare"
            onClick={() =>
              void attempt(async () => {
                await deletePhoto(store, id);
                return null;
              })
            }
          >
            {say('removePhoto')}
            <span class="hidden">: {of}</span>
          </button>
        )}
      </div>
      <FailureLine text={failure} />
    </div>
  );
}
