'use client';

import { useSyncExternalStore } from 'react';
import type { UseFormReturn } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { photoTray } from './photo-tray.ts';
import { usePhotoUploader } from './photo-uploader.ts';
import type { RecordFields } from './record-fields.ts';
import { shrinkPhoto } from './shrink-photo.ts';

/** The most that an entry holds. */
export const PHOTOS_MAX = 20;

/** The photos of a form: those that are kept, and those on their way. */
export function usePhotos(garageId: string, draft: string, form: UseFormReturn<RecordFields>) {
  const upload = usePhotoUploader(garageId);
  const picked = useSyncExternalStore(
    photoTray.watch,
    () => photoTray.of(draft),
    () => photoTray.of(draft),
  );

  async function send(key: string, taken: Blob) {
    const tell = (how: Parameters<typeof photoTray.change>[2]) => photoTray.change(draft, key, how);
    tell({ problem: null, share: 0 });
    try {
      const before = photoTray.of(draft).find((one) => one.key === key);
      const file = before?.file ?? (await shrinkPhoto(taken));
      tell({ file });
      const { id } = await upload(file, (share) => tell({ share }));
      // taken out while it was on its way
      const still = photoTray.of(draft).find((one) => one.key === key);
      if (!still) return;
      photoTray.keepPreview(id, still.preview);
      form.setValue('photos', [...form.getValues('photos'), id]);
      photoTray.drop(draft, key);
    } catch (error) {
      tell({ problem: error instanceof Error ? error.message : String(error) });
    }
  }

  function pick(files: readonly File[]) {
    const room = PHOTOS_MAX - form.getValues('photos').length - photoTray.of(draft).length;
    for (const file of files.slice(0, Math.max(0, room))) {
      const key = newId();
      const preview = URL.createObjectURL(file);
      photoTray.add(draft, {
        key,
        name: file.name,
        preview,
        file: null,
        share: 0,
        problem: null,
      });
      taken.set(key, file);
      void send(key, file);
    }
    return files.length > room
      ? `An entry holds ${PHOTOS_MAX} photos; the rest was left out.`
      : null;
  }

  return {
    picked,
    pick,
    again: (key: string) => {
      const file = taken.get(key);
      if (file) void send(key, file);
    },
    letGo: () => photoTray.empty(draft),
    /** why the form cannot be saved yet; null where it can */
    waitsFor: waitsFor(picked),
  };
}

/** As they came from the camera, for another try. */
const taken = new Map<string, Blob>();

function waitsFor(picked: readonly { problem: string | null }[]): string | null {
  if (picked.some(({ problem }) => problem !== null))
    return 'A photo did not go through: send it again or remove it, then save.';
  return picked.length > 0 ? 'A photo is still on its way.' : null;
}
