import type { CarView } from '@quartermark/api/client';
import { itemWords } from '@quartermark/engine/display';
import type { Route } from 'next';
import { ButtonLink, StateWord, Why } from '../components/index.ts';
import type { WatchedItem } from './ItemList.tsx';
import styles from './ItemRow.module.css';
import { ItemWhy } from './ItemWhy.tsx';

type ItemRowProps = { row: WatchedItem; view: CarView };

/** One item: its state with the figures behind it, the reasons one press away, and what can be done. */
export function ItemRow({ row, view }: ItemRowProps) {
  const { id, item, result } = row;
  return (
    <li className={styles.row}>
      <h3>{item.name}</h3>
      <p className={styles.state}>
        <State row={row} view={view} />
      </p>
      <Why
        of={item.name}
        beside={
          <Ways
            itemId={id}
            name={item.name}
            view={view}
            unknown={result?.reasonCode === 'noBaseline'}
          />
        }
      >
        <ItemWhy row={row} view={view} />
      </Why>
    </li>
  );
}

function State({ row: { item, result }, view: { analysis, car, failure } }: ItemRowProps) {
  if (!result || !analysis)
    return (
      <span className={styles.pending}>{failure ? 'not worked out' : 'being worked out …'}</span>
    );
  const { mark, word, detail } = itemWords(result, item, car.unit, analysis.laidUp !== null);
  return <StateWord kind={mark} words={word} detail={detail} />;
}

type WaysProps = { itemId: string; name: string; view: CarView; unknown: boolean };

function Ways({ itemId, name, view, unknown }: WaysProps) {
  const at = `/g/${view.garage.id}`;
  return (
    <>
      <ButtonLink
        href={`${at}/record/${view.carId}/service?item=${itemId}` as Route}
        look="quiet"
        className={styles.way}
      >
        Done now<span className={styles.unseen}>: {name}</span>
      </ButtonLink>
      <ButtonLink
        href={`${at}/car/${view.carId}/item/${itemId}` as Route}
        look="quiet"
        className={styles.way}
      >
        {unknown ? 'Say when' : 'Change'}
        <span className={styles.unseen}>: {name}</span>
      </ButtonLink>
    </>
  );
}
