import { insertPhoto, lockGarage, type Picture, readPicture, type Tx } from '@quartermark/db';
import type { PreparedPhoto } from './prepare.ts';

/** Where photos are kept. One garage's are out of reach for another. */
export type PhotoStore = {
  /** The same id again changes nothing. */
  put(place: PhotoPlace, photo: PreparedPhoto, by: { at: Date; userId: string }): Promise<void>;
  get(place: PhotoPlace, small: boolean): Promise<Picture | null>;
};

export type PhotoPlace = { garageId: string; photoId: string };

/** In the database, under the garage's own walls, and saved with everything else that is saved. */
export function databasePhotos(tx: Tx): PhotoStore {
  return {
    async put({ garageId, photoId: id }, photo, { at, userId }) {
      await lockGarage(tx, garageId);
      await insertPhoto(tx, { garageId, id, ...photo, addedAt: at, addedBy: userId });
    },
    get: ({ garageId, photoId }, small) => readPicture(tx, garageId, photoId, small),
  };
}
