'use client';

import type { OpenMatter } from '@quartermark/api/client';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, EmptyState, PageAnswer, StateWord } from '../components/index.ts';
import styles from './FindingsScreen.module.css';
import {
  findingsAnswer,
  RANK_MARK,
  RANK_WORDS,
  RANKS,
  type Rank,
  rankOf,
} from './finding-words.ts';
import { MatterLine } from './MatterLine.tsx';

/** Everything in the garage that was found or happened and that nobody has answered, the worst first. */
export function FindingsScreen({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.finding.open.queryOptions({ garageId }));
  const { garage, rows } = data;
  return (
    <>
      <PageAnswer
        about="Findings"
        action={
          <ButtonLink href={`/g/${garageId}/record` as Route} look="main">
            What happened
          </ButtonLink>
        }
      >
        {findingsAnswer(rows)}
      </PageAnswer>
      {rows.length === 0 ? (
        <EmptyState title="Nothing stands open">
          <p>
            What is found on a car, a set or a tool is written down with what happened. It stays
            here until somebody says what became of it.
          </p>
        </EmptyState>
      ) : null}
      {RANKS.map((rank) => (
        <RankList
          key={rank}
          rank={rank}
          rows={rows.filter((row) => rankOf(row) === rank)}
          garage={garage}
        />
      ))}
    </>
  );
}

type RankListProps = {
  rank: Rank;
  rows: readonly OpenMatter[];
  garage: { id: string; today: string; zone: string };
};

function RankList({ rank, rows, garage }: RankListProps) {
  if (rows.length === 0) return null;
  return (
    <section aria-label={RANK_WORDS[rank]} className={styles.section}>
      <h2>
        <StateWord kind={RANK_MARK[rank]} words={RANK_WORDS[rank]} />
      </h2>
      <ul className={styles.list}>
        {rows.map((row) => (
          <MatterLine key={row.matter.entry} row={row} garage={garage} />
        ))}
      </ul>
    </section>
  );
}
