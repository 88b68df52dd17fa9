import type { OpenMatter } from '@quartermark/api/client';
import type { Route } from 'next';
import { ButtonLink, StateWord } from '../components/index.ts';
import { SmallPhotos } from '../record/SmallPhotos.tsx';
import {
  matterDetail,
  matterName,
  RANK_MARK,
  RANK_WORDS,
  rankOf,
  whoseWords,
} from './finding-words.ts';
import styles from './MatterLine.module.css';

type MatterLineProps = {
  row: OpenMatter;
  garage: { id: string; today: string };
  /** false on the page of the car itself */
  whose?: boolean;
};

/** One finding or incident that stands open: how bad, what, where, its photo, and the ways on. */
export function MatterLine({ row, garage, whose = true }: MatterLineProps) {
  const { matter } = row;
  const rank = rankOf(row);
  const name = matterName(row);
  const lines = 'lines' in matter ? matter.lines : [];
  const photos = 'photos' in matter ? matter.photos : [];
  return (
    <li className={styles.row}>
      <div className={styles.words}>
        <p className={styles.state}>
          <StateWord kind={RANK_MARK[rank]} words={RANK_WORDS[rank]} />
        </p>
        <h3>{name}</h3>
        <p>{matterDetail(row, garage.today)}</p>
        {whose ? <Whose row={row} garageId={garage.id} /> : null}
        {lines.length > 0 ? (
          <>
            <p className={styles.look}>To be looked over before it is driven:</p>
            <ul className={styles.lines}>
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </>
        ) : null}
        <Ways row={row} garageId={garage.id} name={name} />
      </div>
      <SmallPhotos garageId={garage.id} ids={photos} linked />
    </li>
  );
}

type PartProps = { row: OpenMatter; garageId: string };

function Whose({ row, garageId }: PartProps) {
  const { carId, gearId } = row;
  const href = carId ? `car/${carId}` : gearId ? `gear/${gearId}` : null;
  const words = whoseWords(row);
  return (
    <p className={styles.whose}>
      {href === null ? (
        words
      ) : (
        <ButtonLink href={`/g/${garageId}/${href}` as Route} look="quiet">
          {words}
        </ButtonLink>
      )}
    </p>
  );
}

/** A matter of a car is answered in its form; one of a tool or a person is answered there. */
function Ways({ row, garageId, name }: PartProps & { name: string }) {
  const { carId, matter } = row;
  const at = `/g/${garageId}`;
  return (
    <p className={styles.ways}>
      {carId ? (
        <ButtonLink
          href={`${at}/record/${carId}/answer?notice=${matter.entry}` as Route}
          look="quiet"
        >
          Answered<span className={styles.unseen}>: {name}</span>
        </ButtonLink>
      ) : null}
      <ButtonLink href={`${at}/entry/${matter.entry}` as Route} look="quiet">
        Open entry<span className={styles.unseen}>: {name}</span>
      </ButtonLink>
    </p>
  );
}
