import { photoAddress } from './photo-uploader.ts';
import styles from './SmallPhotos.module.css';

type SmallPhotosProps = {
  garageId: string;
  ids: readonly string[] | undefined;
  /** each leads to the whole picture */
  linked?: boolean;
};

/** The photos of an entry, small. */
export function SmallPhotos({ garageId, ids = [], linked = false }: SmallPhotosProps) {
  if (ids.length === 0) return null;
  return (
    <ul className={styles.photos} aria-label="Photos">
      {ids.map((id, at) => {
        const picture = (
          // biome-ignore lint/performance/noImgElement: it lies behind the sign-in, and is small already
          <img
            className={styles.picture}
            src={photoAddress(garageId, id, true)}
            alt={`Number ${at + 1}`}
            loading="lazy"
          />
        );
        return (
          <li key={id}>
            {linked ? <a href={photoAddress(garageId, id, false)}>{picture}</a> : picture}
          </li>
        );
      })}
    </ul>
  );
}
