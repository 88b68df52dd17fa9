'use client';

import { createContext, useContext, useMemo } from 'react';
import { newId } from '../client/make-id.ts';

/** Told how much of a photo is away, 0 to 1. */
export type OnProgress = (share: number) => void;

/**
 * Takes a photo away from the form and gives the id under which it is kept.
 *
 * @throws Error whose message says what is wrong and how to mend it
 */
export type PhotoUploader = (file: Blob, onProgress?: OnProgress) => Promise<{ id: string }>;

/** Where photos go; null means straight to the server. */
export const PhotoUploaderContext = createContext<PhotoUploader | null>(null);

export function usePhotoUploader(garageId: string): PhotoUploader {
  const given = useContext(PhotoUploaderContext);
  return useMemo(() => given ?? directUploader(garageId), [given, garageId]);
}

/** The address of a kept photo; small ones are for lists. */
export function photoAddress(garageId: string, photoId: string, small: boolean): string {
  return `/api/photo/${garageId}/${photoId}${small ? '?small=1' : ''}`;
}

const NO_SIGNAL =
  'The photo did not reach the server. It is still here: try again when there is signal, or remove it.';

/** The same picture sent again goes under the same id, so that it is kept once only. */
const ids = new WeakMap<Blob, string>();

function directUploader(garageId: string): PhotoUploader {
  return (file, onProgress) => {
    const id = ids.get(file) ?? newId();
    ids.set(file, id);
    return new Promise((resolve, reject) => {
      // fetch does not tell how far it is
      const request = new XMLHttpRequest();
      request.open('POST', photoAddress(garageId, id, false));
      request.setRequestHeader('content-type', file.type);
      request.upload.onprogress = ({ loaded, total, lengthComputable }) => {
        if (lengthComputable && total > 0) onProgress?.(loaded / total);
      };
      request.onload = () =>
        request.status < 300 ? resolve({ id }) : reject(new Error(refusalOf(request)));
      request.onerror = () => reject(new Error(NO_SIGNAL));
      request.send(file);
    });
  };
}

function refusalOf({ status, responseText }: XMLHttpRequest): string {
  try {
    const said: unknown = JSON.parse(responseText);
    const { refusal } = said as { refusal?: { message?: unknown } };
    if (typeof refusal?.message === 'string') return refusal.message;
  } catch {
    // no answer of ours: the status is all there is
  }
  return `The server did not take the photo (status ${status}). Try again, or remove it.`;
}
