import type { OpenMatter } from '@quartermark/api/client';
import type { Route } from 'next';
import { ButtonLink, StateWord } from '../components/index.ts';
import { SmallPhotos } from '../record/SmallPhotos.tsx';
import { AnswerHere } from './AnswerHere.tsx';
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
  garage: { id: string; today: string; zone: string };
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
        {whose ? null : (
          <p className={styles.state}>
            <StateWord kind={RANK_MARK[rank]} words={RANK_WORDS[rank]} />
          </p>
        )}
        <h3>{name}</h3>
        {'detail' in matter && matter.detail !== null ? <p>{matter.detail}</p> : null}
        <p>
          {whose ? `${whoseWords(row)}: ` : ''}
          {matterDetail(row, garage.today)}
        </p>
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
        <Ways row={row} garage={garage} name={name} whose={whose} />
      </div>
      <SmallPhotos garageId={garage.id} ids={photos} linked />
    </li>
  );
}

type WaysProps = Required<MatterLineProps> & { name: string };

/** A matter of a car is answered in its form, one of a tool or a person where it stands. */
function Ways({ row, garage, name, whose }: WaysProps) {
  const { carId, gearId, matter } = row;
  const at = `/g/${garage.id}`;
  const own = carId ? `car/${carId}` : gearId ? `gear/${gearId}` : null;
  return (
    <div className={styles.ways}>
      {carId ? (
        <ButtonLink
          href={`${at}/record/${carId}/answer?notice=${matter.entry}` as Route}
          look="quiet"
        >
          Answered<span className={styles.unseen}>: {name}</span>
        </ButtonLink>
      ) : gearId ? (
        <AnswerHere garage={garage} gearId={gearId} notice={matter.entry} name={name} />
      ) : null}
      <ButtonLink href={`${at}/entry/${matter.entry}` as Route} look="quiet">
        Open entry<span className={styles.unseen}>: {name}</span>
      </ButtonLink>
      {whose && own !== null ? (
        <ButtonLink href={`${at}/${own}` as Route} look="quiet">
          {whoseWords(row)}
        </ButtonLink>
      ) : null}
    </div>
  );
}
