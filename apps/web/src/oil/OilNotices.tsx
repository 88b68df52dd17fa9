'use client';

import type { CarView } from '@quartermark/api/client';
import type { Analysis } from '@quartermark/engine';
import {
  nextLookSentence,
  OIL_NOTICE_WORDS,
  oilStopSentence,
  riseSentence,
  unexplainedRiseSentence,
} from '@quartermark/engine/display';
import { OIL_ANSWERS } from '@quartermark/engine/log';
import type { Route } from 'next';
import { ButtonLink, StateWord } from '../components/index.ts';
import type { MarkKind } from '../components/StateMark.tsx';
import { NoticeAnswers } from './NoticeAnswers.tsx';
import styles from './OilNotices.module.css';
import { oilFactsOf } from './oil-facts.ts';

type Oil = Analysis['oil'];
type Notice = Oil['notices'][number];

/** What the oil ledger wants looked into, each with its ways out. Absent while there is nothing. */
export function OilNotices({ view }: { view: CarView }) {
  const oil = view.analysis?.oil;
  const open = oil?.notices.filter(isOpen) ?? [];
  if (!oil || open.length === 0) return null;
  return (
    <section aria-label="Oil, to look into" className={styles.notices}>
      <h2>Oil, to look into</h2>
      <ul className={styles.list}>
        {open.map((notice) => (
          <Line key={notice.id} notice={notice} oil={oil} view={view} />
        ))}
      </ul>
    </section>
  );
}

/** One that was answered is out of sight; use that really rose stays watched until it is as it was. */
function isOpen({ answer }: Notice): boolean {
  return answer === null || answer.words === OIL_ANSWERS.really;
}

type LineProps = { notice: Notice; oil: Oil; view: CarView };

const MARK: Readonly<Record<Notice['kind'], MarkKind>> = {
  low: 'overdue',
  lowSoon: 'dueSoon',
  useRisen: 'dueSoon',
  unexplainedRise: 'overdue',
};

function Line({ notice, oil, view }: LineProps) {
  const watched = notice.answer !== null;
  const words = watched
    ? 'Uses more oil than it did, being watched'
    : OIL_NOTICE_WORDS[notice.kind];
  return (
    <li className={styles.line}>
      <p className={styles.state}>
        <StateWord kind={MARK[notice.kind]} words={words} />
      </p>
      <p>{sentenceOf(notice, oil, view)}</p>
      <div className={styles.ways}>
        <Ways notice={notice} view={view} />
      </div>
    </li>
  );
}

function sentenceOf({ kind }: Notice, oil: Oil, view: CarView): string | null {
  const facts = oilFactsOf(view);
  switch (kind) {
    case 'low':
      return oilStopSentence(oil);
    case 'lowSoon':
      return `At this rate it may be below MIN within a week. ${nextLookSentence(oil, facts)}`;
    case 'useRisen':
      return riseSentence(oil, facts);
    case 'unexplainedRise':
      return unexplainedRiseSentence(oil, facts.volumeUnit);
  }
}

function Ways({ notice, view }: { notice: Notice; view: CarView }) {
  const record = (kind: string) => `/g/${view.garage.id}/record/${view.carId}/${kind}` as Route;
  switch (notice.kind) {
    case 'low':
    case 'lowSoon':
      return (
        <>
          <ButtonLink href={record('oilCheck')} look="quiet">
            Record a look
          </ButtonLink>
          <ButtonLink href={record('oilTopUp')} look="quiet">
            Record oil added
          </ButtonLink>
        </>
      );
    case 'useRisen':
      return (
        <>
          <ButtonLink href={record('session')} look="quiet">
            A session is missing
          </ButtonLink>
          <ButtonLink href={record('oilTopUp')} look="quiet">
            A top-up is missing
          </ButtonLink>
          {notice.answer === null ? <NoticeAnswers notice={notice} view={view} /> : null}
        </>
      );
    case 'unexplainedRise':
      return (
        <>
          <ButtonLink href={record('oilTopUp')} look="quiet">
            A top-up is missing
          </ButtonLink>
          <ButtonLink href={record('finding')} look="quiet">
            Fuel or coolant in it
          </ButtonLink>
          <NoticeAnswers notice={notice} view={view} />
        </>
      );
  }
}
