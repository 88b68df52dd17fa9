'use client';

import { useState } from 'react';
import { useWatch } from 'react-hook-form';
import { Button } from '../components/index.ts';
import styles from './PhotoField.module.css';
import type { PartProps } from './parts.ts';
import { type PickedPhoto, photoTray } from './photo-tray.ts';
import { photoAddress } from './photo-uploader.ts';
import type { usePhotos } from './use-photos.ts';

type PhotoFieldProps = Pick<PartProps, 'form' | 'errors'> & {
  garageId: string;
  draft: string;
  photos: ReturnType<typeof usePhotos>;
};

/** Photos of an entry: taken or chosen, sent at once, and shown small. */
export function PhotoField({ form, errors, garageId, draft, photos }: PhotoFieldProps) {
  const kept = useWatch({ control: form.control, name: 'photos' });
  const [tooMany, setTooMany] = useState<string | null>(null);
  const wrong = tooMany ?? errors['entry.photos'];
  return (
    <fieldset className={styles.field}>
      <legend>
        Photos <span className={styles.optional}>(optional)</span>
      </legend>
      <ul className={styles.photos}>
        {kept.map((id, at) => (
          <Kept
            key={id}
            garageId={garageId}
            id={id}
            place={at + 1}
            onRemove={() =>
              form.setValue(
                'photos',
                kept.filter((one) => one !== id),
              )
            }
          />
        ))}
        {photos.picked.map((photo) => (
          <Picked
            key={photo.key}
            photo={photo}
            onAgain={() => photos.again(photo.key)}
            onRemove={() => photoTray.drop(draft, photo.key)}
          />
        ))}
      </ul>
      <label className={styles.pick}>
        {kept.length + photos.picked.length === 0 ? 'Add a photo' : 'Add another photo'}
        <input
          type="file"
          accept="image/*"
          multiple
          onChange={({ currentTarget }) => {
            setTooMany(photos.pick([...(currentTarget.files ?? [])]));
            // the same file may be picked again
            currentTarget.value = '';
          }}
        />
      </label>
      {wrong ? (
        <p role="alert" className={styles.problem}>
          {wrong}
        </p>
      ) : null}
    </fieldset>
  );
}

type KeptProps = { garageId: string; id: string; place: number; onRemove: () => void };

function Kept({ garageId, id, place, onRemove }: KeptProps) {
  return (
    <li className={styles.photo}>
      {/* biome-ignore lint/performance/noImgElement: it lies behind the sign-in, and is small already */}
      <img
        className={styles.picture}
        src={photoTray.previewOf(id) ?? photoAddress(garageId, id, true)}
        alt={`Number ${place}`}
      />
      <span>Photo {place}</span>
      <Button look="quiet" aria-label={`Remove photo ${place}`} onClick={onRemove}>
        Remove
      </Button>
    </li>
  );
}

type PickedProps = { photo: PickedPhoto; onAgain: () => void; onRemove: () => void };

function Picked({ photo, onAgain, onRemove }: PickedProps) {
  const { name, preview, share, problem } = photo;
  return (
    <li className={styles.photo}>
      {/* biome-ignore lint/performance/noImgElement: it is in this page only */}
      <img className={styles.picture} src={preview} alt="" />
      <div>
        <p className={styles.name}>{name}</p>
        {problem ? (
          <p role="alert" className={styles.problem}>
            {problem}
          </p>
        ) : (
          <progress aria-label={`Sending ${name}`} value={share} />
        )}
      </div>
      <span className={styles.ways}>
        {problem ? (
          <Button look="quiet" aria-label={`Send ${name} again`} onClick={onAgain}>
            Again
          </Button>
        ) : null}
        <Button look="quiet" aria-label={`Remove ${name}`} onClick={onRemove}>
          Remove
        </Button>
      </span>
    </li>
  );
}
