import { itemWords } from '@quartermark/engine/display';
import type { Route } from 'next';
import { ButtonLink, StateWord, Why } from '../components/index.ts';
import type { Owned } from '../items/owned.ts';
import { PartsLine } from '../order/PartsLine.tsx';
import type { WatchedItem } from './ItemList.tsx';
import styles from './ItemRow.module.css';
import { ItemWhy } from './ItemWhy.tsx';

type ItemRowProps = { row: WatchedItem; owned: Owned };

/** One item: its state with the figures behind it, the reasons one press away, and what can be done. */
export function ItemRow({ row, owned }: ItemRowProps) {
  const { id, item, result } = row;
  return (
    <li className={styles.row}>
      <h3>{item.name}</h3>
      <p className={styles.state}>
        <State row={row} owned={owned} />
      </p>
      <PartsLine row={row} owned={owned} />
      <Why
        of={item.name}
        beside={
          <Ways
            itemId={id}
            name={item.name}
            owned={owned}
            unknown={result?.reasonCode === 'noBaseline'}
          />
        }
      >
        <ItemWhy row={row} owned={owned} />
      </Why>
    </li>
  );
}

function State({ row: { item, result }, owned }: ItemRowProps) {
  const { unit, laidUp, failed, analysis } = owned;
  if (!result)
    return (
      <span className={styles.pending}>{failed ? 'not worked out' : 'being worked out …'}</span>
    );
  const { mark, word, detail } = itemWords(result, item, {
    unit,
    laidUp,
    asOf: analysis?.asOf ?? null,
  });
  return <StateWord kind={mark} words={word} detail={detail} />;
}

type WaysProps = { itemId: string; name: string; owned: Owned; unknown: boolean };

function Ways({ itemId, name, owned, unknown }: WaysProps) {
  return (
    <>
      <ButtonLink
        href={`${owned.doneHref}?item=${itemId}` as Route}
        look="quiet"
        className={styles.way}
      >
        Done now<span className={styles.unseen}>: {name}</span>
      </ButtonLink>
      <ButtonLink
        href={`${owned.href}/item/${itemId}` as Route}
        look="quiet"
        className={styles.way}
      >
        {unknown ? 'Say when' : 'Change'}
        <span className={styles.unseen}>: {name}</span>
      </ButtonLink>
    </>
  );
}
