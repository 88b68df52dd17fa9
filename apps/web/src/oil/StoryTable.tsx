'use client';

import type { CarView } from '@quartermark/api/client';
import type { OilStory, StoryEntry } from '@quartermark/engine';
import {
  conditionWords,
  formatDay,
  fromMaxWords,
  likelyStop,
  type OilFacts,
  oilFitSentences,
  perWords,
  rateBand,
  rateFigure,
  storyWords,
  verdictWords,
} from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import { useState } from 'react';
import { Button } from '../components/index.ts';
import styles from './StoryTable.module.css';

type StoryTableProps = { story: OilStory; facts: OilFacts; view: CarView };

/** So many are shown until somebody asks for all. */
const FIRST = 12;

/** What the charts are drawn from, newest first: what happened, how it was read, and what came of it. */
export function StoryTable({ story, facts, view }: StoryTableProps) {
  const [all, setAll] = useState(false);
  const rows = story.entries.toReversed();
  return (
    <>
      <table className={styles.table}>
        <caption>Newest first</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">What happened</th>
            <th scope="col">Likely level after it; use in {perWords(facts)}, as known then</th>
          </tr>
        </thead>
        <tbody>
          {rows.slice(0, all ? rows.length : FIRST).map((row) => (
            <Row key={row.entry} row={row} story={story} facts={facts} view={view} />
          ))}
        </tbody>
      </table>
      {rows.length > FIRST && !all ? (
        <div className={styles.more}>
          <Button look="quiet" onClick={() => setAll(true)}>
            Show all {rows.length}
          </Button>
        </div>
      ) : null}
    </>
  );
}

type RowProps = StoryTableProps & { row: StoryEntry };

function Row({ row, story, facts, view }: RowProps) {
  const { oilGrade: grade, oilApproval: approval } = view.car.profile;
  const lines = [
    ...verdictWords(row, facts.volumeUnit),
    ...(row.oil === null ? [] : oilFitSentences({ grade, approval }, row.oil)),
  ];
  const how = conditionWords(row.condition);
  const { likely } = row.after;
  const litres = fromMaxWords(likely, facts.volumeUnit);
  const stop = likelyStop(1 + likely / story.spanL);
  return (
    <tr>
      <th scope="row">{formatDay(row.on)}</th>
      <td>
        <Link href={`/g/${view.garage.id}/entry/${row.entry}` as Route} prefetch={false}>
          {storyWords(row, facts.volumeUnit)}
        </Link>
        {how === null ? null : <span className={styles.beneath}>Read {how}.</span>}
        {lines.map((words) => (
          <span key={words} className={styles.beneath}>
            {words}
          </span>
        ))}
      </td>
      <td>
        {stop === litres ? stop : `${stop}, ${litres}`}
        <Rates rates={row.rates} facts={facts} />
      </td>
    </tr>
  );
}

function Rates({ rates, facts }: { rates: StoryEntry['rates']; facts: OilFacts }) {
  if (rates === null) return null;
  if (rates.road === null) return <span className={styles.beneath}>no rate yet</span>;
  const { road, hard } = rates;
  return (
    <>
      <span className={styles.beneath}>
        road {rateFigure(road.likely, facts)} ({rateBand(road, facts)})
      </span>
      {hard === null ? null : (
        <span className={styles.beneath}>
          hard use {rateFigure(hard.likely, facts)} ({rateBand(hard, facts)})
        </span>
      )}
    </>
  );
}
