import type { GearRow } from '@quartermark/api/client';
import type { Route } from 'next';
import Link from 'next/link';
import { StateMark } from '../components/index.ts';
import { Bedding } from './Bedding.tsx';
import styles from './GearLine.module.css';
import { fittedWords, standsLines, watchedOf, wearLine } from './gear-facts.ts';
import { sortName } from './gear-words.ts';

function nothingWords({ analysis }: GearRow): string {
  return analysis ? 'Nothing is watched on it yet.' : 'Not worked out: a log could not be read.';
}

type GearLineProps = { row: GearRow; garageId: string; unit: 'km' | 'mi' };

/** One set, tool or person of the list: where it is, what runs out first, how thin and how bedded. */
export function GearLine({ row, garageId, unit }: GearLineProps) {
  const { gearId, gear } = row;
  const [first] = watchedOf(row, unit);
  const worn = wearLine(row, unit);
  return (
    <li className={styles.row}>
      <h3>
        <Link
          href={`/g/${garageId}/gear/${gearId}` as Route}
          prefetch={false}
          className={styles.link}
        >
          {gear.name}
        </Link>
        {gear.kind === 'person' ? null : <span className={styles.sort}>{sortName(gear)}</span>}
      </h3>
      {worn ? (
        <p className={styles.state}>
          <StateMark kind={worn.mark} />
          <span>
            Wear: <strong>{worn.word}</strong>, {worn.words}
          </span>
        </p>
      ) : null}
      {first ? (
        <p className={styles.state}>
          <StateMark kind={first.words.mark} />
          <span>
            {first.item.item.name}: <strong>{first.words.word}</strong>
            {first.words.detail === '' ? '' : `, ${first.words.detail}`}
          </span>
        </p>
      ) : worn ? null : (
        <p>{nothingWords(row)}</p>
      )}
      <Bedding row={row} />
      <p className={styles.lines}>
        {worn ? fittedWords(row, unit) : standsLines(row, unit).join(' ')}
      </p>
    </li>
  );
}
