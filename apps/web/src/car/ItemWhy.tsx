import { type ItemResult, isAmountLimit, type LimitResult } from '@quartermark/engine';
import {
  dueAtOnceSentence,
  hardUseSentence,
  limitsWords,
  nowSentence,
  whySentence,
} from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import { Why } from '../components/index.ts';
import type { Owned } from '../items/owned.ts';
import { betterWords } from './better-words.ts';
import { Evidence } from './Evidence.tsx';
import type { WatchedItem } from './ItemList.tsx';
import styles from './ItemWhy.module.css';
import { UseBar } from './UseBar.tsx';
import { WhenDue } from './WhenDue.tsx';

type ItemWhyProps = { row: WatchedItem; owned: Owned };

/** The reasons for an item's state: each limit, hard use, the way it is reckoned, whose value it is. */
export function ItemWhy({ row, owned }: ItemWhyProps) {
  const { item, result } = row;
  return (
    <div className={styles.why}>
      {result ? <WhenDue row={row} result={result} owned={owned} /> : null}
      {result ? <Limits row={row} result={result} unit={owned.unit} /> : null}
      <p>
        Limits: {limitsWords(item.limits)}. {sourceWords(item.source)}
      </p>
      {result ? <p>{formulaWords(result)}</p> : null}
      {result ? <Better result={result} /> : null}
      {result && result.evidence.length > 0 ? (
        <Why of={item.name} words={entriesWords(result.evidence.length)}>
          <Evidence ids={result.evidence} view={owned} />
        </Why>
      ) : null}
      {result?.dueDate && 'carId' in owned.owner ? (
        <p>
          <Link
            href={`/g/${owned.garage.id}/said?car=${owned.owner.carId}` as Route}
            prefetch={false}
          >
            We said, it was: how such days of this car came out
          </Link>
        </p>
      ) : null}
      <p className={styles.computed}>{owned.computed}</p>
    </div>
  );
}

type LimitsProps = { row: WatchedItem; result: ItemResult; unit: 'km' | 'mi' };

function Limits({ row: { item }, result, unit }: LimitsProps) {
  const atOnce = dueAtOnceSentence(result);
  const over = result.reasonCode === 'doneOnce';
  return (
    <>
      {atOnce === null ? null : <p>{atOnce}</p>}
      {(over ? [] : result.limits).map((limit) => (
        <div key={`${limit.measure}:${limit.severe}`} className={styles.limit}>
          <p>{whySentence(limit, { service: result.service, item, unit })}</p>
          {isAmountLimit(limit) ? <UseBar limit={limit} item={item} unit={unit} /> : null}
          <Now limit={limit} item={item} unit={unit} />
        </div>
      ))}
      {result.severe && item.severe && !over ? (
        <p>{hardUseSentence(result.severe, item.severe, unit)}</p>
      ) : null}
    </>
  );
}

type NowProps = { limit: LimitResult; item: WatchedItem['item']; unit: 'km' | 'mi' };

function Now({ limit, item, unit }: NowProps) {
  const words = nowSentence(limit, { item, unit });
  return words === null ? null : <p>{words}</p>;
}

function Better({ result }: { result: ItemResult }) {
  const words = betterWords(result);
  if (words.length === 0) return null;
  return (
    <div>
      <p>What would make this better:</p>
      <ul className={styles.better}>
        {words.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

function sourceWords(source: string | undefined): string {
  return source ? `Source: ${source}.` : 'No source is named: unverified.';
}

function formulaWords({ limits, dueDate }: ItemResult): string {
  const amounts = limits.some(isAmountLimit);
  const days = limits.some(({ measure }) => measure === 'months' || measure === 'days');
  return [
    amounts
      ? 'What is left is the limit less the use counted since the last service, each kind of use as heavily as the item says.'
      : '',
    days ? 'Months and days run from the last service, whether the car is used or not.' : '',
    limits.length > 1
      ? `The limit ${dueDate === undefined ? 'used up the furthest' : 'that is likely reached first'} decides.`
      : '',
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function entriesWords(count: number): string {
  return count === 1 ? 'The entry it rests on' : `The ${count} entries it rests on`;
}
