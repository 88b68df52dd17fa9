import { insertPhoto, type Picture, readPhotoSize, readPicture, type Tx } from '@quartermark/db';
import type { PreparedPhoto } from './prepare.ts';

/** Where photos are kept. One garage's are out of reach for another, and none is ever changed. */
export type PhotoStore = {
  /** The same id again changes nothing. @returns the size of what is kept under the id */
  put(
    place: PhotoPlace,
    photo: PreparedPhoto,
    by: { at: Date; userId: string },
  ): Promise<PhotoSize>;
  get(place: PhotoPlace, small: boolean): Promise<Picture | null>;
  /** null: none is kept under the id */
  size(place: PhotoPlace): Promise<PhotoSize | null>;
};

export type PhotoPlace = { garageId: string; photoId: string };
/** In pixels, of the large picture. */
export type PhotoSize = { width: number; height: number };

/** In the database, under the garage's own walls, and saved with everything else that is saved. */
export function databasePhotos(tx: Tx): PhotoStore {
  const size: PhotoStore['size'] = ({ garageId, photoId }) => readPhotoSize(tx, garageId, photoId);
  return {
    size,
    async put(place, photo, { at, userId }) {
      const { garageId, photoId: id } = place;
      const row = { garageId, id, ...photo, addedAt: at, addedBy: userId };
      if (await insertPhoto(tx, row)) return { width: photo.width, height: photo.height };
      const there = await size(place);
      if (!there) throw new Error(`could not keep photo ${id}: its id is taken by nothing`);
      return there;
    },
    get: ({ garageId, photoId }, small) => readPicture(tx, garageId, photoId, small),
  };
}
