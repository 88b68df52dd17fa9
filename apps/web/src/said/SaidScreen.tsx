'use client';

import type { SaidCar, SaidPage } from '@quartermark/api/client';
import { saidAnswer, saidSentences } from '@quartermark/engine/display';
import { tallySaid } from '@quartermark/engine/said';
import { useSuspenseInfiniteQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import { useMorePages } from '../client/use-more-pages.ts';
import { Button, EmptyState, PageAnswer } from '../components/index.ts';
import { SaidLine } from './SaidLine.tsx';
import styles from './SaidScreen.module.css';
import { SaidTable } from './SaidTable.tsx';
import { GROUP_WORDS, SAID_GROUPS, type SaidRow, saidGroups } from './said-groups.ts';
import { saidPages } from './said-pages.ts';

type SaidScreenProps = { garageId: string; carId: string | undefined };

/** What was said of when things fall due, held against what happened: misses first. */
export function SaidScreen({ garageId, carId }: SaidScreenProps) {
  const trpc = useTRPC();
  const said = useSuspenseInfiniteQuery(
    trpc.said.list.infiniteQueryOptions({ garageId, carId }, saidPages),
  );
  const { more, busy } = useMorePages(said);
  const first = said.data.pages[0] as SaidPage;
  const { total } = said.data.pages.at(-1) ?? first;
  const cars = said.data.pages.flatMap((page) => page.cars);
  const tally = tallySaid(cars.flatMap(({ lines }) => lines ?? []));
  const groups = saidGroups(cars);
  const any = SAID_GROUPS.some((group) => groups[group].length > 0);
  return (
    <>
      <PageAnswer
        about={carId === undefined ? 'We said, it was' : `We said, it was: ${cars[0]?.name ?? ''}`}
        beneath={
          <div className={styles.beneath}>
            <p>{saidSentences(tally).join(' ')}</p>
            <p>
              <Of cars={cars.length} total={total} garageId={garageId} one={carId !== undefined} />
            </p>
          </div>
        }
      >
        {saidAnswer(tally)}
      </PageAnswer>
      <Unreadable cars={cars} />
      {any ? <SaidTable horizons={tally.horizons} /> : <Nothing />}
      {SAID_GROUPS.map((group) => {
        const As = group === 'without' ? NotCompared : Group;
        return (
          <As key={group} title={GROUP_WORDS[group]} rows={groups[group]} garageId={garageId} />
        );
      })}
      {said.hasNextPage ? (
        <div className={styles.more}>
          <Button onClick={more} busy={busy} busyWords="Working out more cars …">
            Work out more cars
          </Button>
        </div>
      ) : null}
    </>
  );
}

type OfProps = { cars: number; total: number; garageId: string; one: boolean };

function Of({ cars, total, garageId, one }: OfProps) {
  if (one)
    return (
      <>
        This car alone. <Link href={`/g/${garageId}/said` as Route}>All cars of the garage</Link>
      </>
    );
  if (cars < total) return `So far of ${cars} of ${total} cars; more below.`;
  return total === 1 ? 'Of the one car here.' : `Of all ${total} cars.`;
}

type GroupProps = { title: string; rows: readonly SaidRow[]; garageId: string };

function Group({ title, rows, garageId }: GroupProps) {
  if (rows.length === 0) return null;
  return (
    <section aria-label={title} className={styles.section}>
      <h2>
        {title}: {rows.length}
      </h2>
      <Rows rows={rows} garageId={garageId} />
    </section>
  );
}

/** What says nothing of the dates, one press away. */
function NotCompared({ title, rows, garageId }: GroupProps) {
  if (rows.length === 0) return null;
  return (
    <details className={styles.section}>
      <summary className={styles.fold}>
        {title}: {rows.length}
      </summary>
      <Rows rows={rows} garageId={garageId} />
    </details>
  );
}

function Rows({ rows, garageId }: Omit<GroupProps, 'title'>) {
  return (
    <ul className={styles.list}>
      {rows.map((row) => (
        <SaidLine key={row.key} row={row} garageId={garageId} />
      ))}
    </ul>
  );
}

function Nothing() {
  return (
    <EmptyState title="Nothing was said yet">
      <p>
        Once an item has a likely day, it is kept here each week, and held against the day its limit
        is reached. Record what happens, and read the odometer now and then.
      </p>
    </EmptyState>
  );
}

function Unreadable({ cars }: { cars: readonly SaidCar[] }) {
  const names = cars.filter(({ lines }) => lines === null).map(({ name }) => name);
  if (names.length === 0) return null;
  return (
    <p className={styles.section}>
      The log of {names.join(', ')} cannot be read, so nothing of it is counted here. Its own page
      says what to mend.
    </p>
  );
}
