'use client';

import type { EntryOf } from '@quartermark/engine/log';
import { useId, useState } from 'react';
import { newId } from '../../client/make-id.ts';
import { Button, Choice, TextField } from '../../components/index.ts';
import type { NewPhoto } from '../queue/command.ts';
import { type FastProps, said } from './begin.ts';
import styles from './Fast.module.css';

const WHERE = [
  { value: 'frontLeft' as const, words: 'Front left' },
  { value: 'frontRight' as const, words: 'Front right' },
  { value: 'rearLeft' as const, words: 'Rear left' },
  { value: 'rearRight' as const, words: 'Rear right' },
  { value: 'elsewhere' as const, words: 'Elsewhere' },
];
const SEVERITY: readonly { value: EntryOf<'finding'>['severity']; words: string }[] = [
  { value: 'doNotDrive', words: 'Do not drive' },
  { value: 'beforeHardUse', words: 'Before hard use' },
  { value: 'watch', words: 'Keep an eye on it' },
  { value: 'cosmetic', words: 'Cosmetic' },
];
const PHOTOS_MAX = 20;

/** Where, how bad, a picture of it; words where there is time for them. */
export function FastFinding({ begin, save, busy }: FastProps) {
  const [where, setWhere] = useState<(typeof WHERE)[number]['value'] | null>(null);
  const [severity, setSeverity] = useState<EntryOf<'finding'>['severity'] | null>(null);
  const [photos, setPhotos] = useState<readonly NewPhoto[]>([]);
  const [what, setWhat] = useState('');
  const corner = where === 'elsewhere' ? null : where;

  function record() {
    if (severity === null) return;
    const ids = photos.map(({ photoId }) => photoId);
    return save(
      {
        kind: 'finding',
        ...begin(),
        what: said(what) ?? (ids.length > 0 ? 'As the photo shows' : 'Not described yet'),
        ...(corner ? { where: corner } : {}),
        severity,
        ...(ids.length > 0 ? { photos: ids } : {}),
      },
      photos,
    );
  }

  return (
    <>
      <Choice label="Where it is" value={where} onChange={setWhere} options={WHERE} />
      <Choice label="How bad it is" value={severity} onChange={setSeverity} options={SEVERITY} />
      <PhotoPress
        count={photos.length}
        onPhotos={(blobs) =>
          setPhotos((all) =>
            [...all, ...blobs.map((blob) => ({ photoId: newId(), blob }))].slice(0, PHOTOS_MAX),
          )
        }
      />
      <TextField
        label="What you saw"
        optional
        maxLength={200}
        value={what}
        onChange={(event) => setWhat(event.currentTarget.value)}
      />
      <p className={styles.save}>
        <Button
          look="main"
          busy={busy}
          busyWords="Saving …"
          reason={severity === null ? 'Say how bad it is.' : null}
          onClick={record}
        >
          Save
        </Button>
      </p>
    </>
  );
}

type PhotoPressProps = { count: number; onPhotos: (photos: readonly Blob[]) => void };

function PhotoPress({ count, onPhotos }: PhotoPressProps) {
  const id = useId();
  const taken = count === 0 ? 'none yet' : count === 1 ? 'one taken' : `${count} taken`;
  return (
    <div className={styles.photo}>
      <input
        id={id}
        type="file"
        accept="image/jpeg,image/png,image/webp"
        capture="environment"
        multiple
        className={styles.file}
        onChange={(event) => {
          onPhotos([...(event.currentTarget.files ?? [])]);
          // the same picture may be chosen again
          event.currentTarget.value = '';
        }}
      />
      <label htmlFor={id} className={styles.photoPress}>
        Photo
        <span className={styles.hint}>{taken}</span>
      </label>
    </div>
  );
}
