'use client';

import type { DueList, GarageView } from '@quartermark/api/client';
import { dueListSentences, formatDay } from '@quartermark/engine/display';
import { keepPreviousData, useInfiniteQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useEffect, useState } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { Button, ButtonLink, EmptyState, PageAnswer } from '../components/index.ts';
import { DueFilterBar } from './DueFilterBar.tsx';
import { DueLines } from './DueLines.tsx';
import styles from './DueScreen.module.css';
import { DUE_PARTS, type DueFilter, WHOLE_LIST, writeDueFilter } from './due-filter.ts';
import { duePages, soonDay, soonQuestion } from './due-question.ts';
import { useDuePart } from './use-due-part.ts';
import { usePrintAll } from './use-print-all.ts';

type DueScreenProps = {
  /** as it was when the page was asked for */
  garage: GarageView;
  filter: DueFilter;
  cars: readonly { carId: string; name: string }[];
};

/** What falls due in the whole garage, by its day; the sort and the filter stand in the address. */
export function DueScreen({ garage, filter: first, cars }: DueScreenProps) {
  const trpc = useTRPC();
  const { id: garageId, today } = garage;
  const [filter, setFilter] = useState(first);
  useInAddress(filter);
  const near = useInfiniteQuery({
    ...trpc.due.list.infiniteQueryOptions(soonQuestion(garageId, filter.car, today), duePages),
    placeholderData: keepPreviousData,
  });
  const soon = near.data?.pages[0];
  const parts = {
    dated: useDuePart(garageId, filter, 'dated'),
    apart: useDuePart(garageId, filter, 'apart'),
    unsure: useDuePart(garageId, filter, 'unsure'),
  };
  const queries = DUE_PARTS.map((part) => parts[part]);
  const printing = usePrintAll(queries);
  const nothing = soon !== undefined && Object.values(soon.counts).every((count) => count === 0);
  const shown = queries.flatMap(({ data: of }) => of?.pages.flatMap(({ rows }) => rows) ?? []);
  const [head, ...rest] = soon ? sentencesOf(soon, today) : ['What falls due, by its day.'];
  return (
    <>
      <PageAnswer
        about={`What is due, ${garage.name}`}
        beneath={
          <>
            {rest.length > 0 ? <p className={styles.rest}>{rest.join(' ')}</p> : null}
            <p>
              By the log of {formatDay(today)}, {garage.zone}.
              <span className={styles.onPaper}> Void after any entry.</span>
            </p>
          </>
        }
      >
        {head}
      </PageAnswer>
      {nothing && filter.car === null ? (
        <NothingWatched garageId={garageId} />
      ) : (
        <>
          <DueFilterBar filter={filter} onChange={setFilter} cars={cars} />
          {shown.length === 0 && queries.every(({ isSuccess }) => isSuccess) ? (
            <NoneFits onWhole={() => setFilter({ ...WHOLE_LIST, sort: filter.sort })} />
          ) : (
            <div className={styles.print}>
              <Button
                onClick={printing.print}
                busy={printing.busy}
                busyWords="Fetching all lines …"
              >
                Print the list
              </Button>
              {printing.cut ? <p>{printing.cut}</p> : null}
            </div>
          )}
          {DUE_PARTS.map((part) => (
            <DueLines
              key={part}
              part={part}
              query={parts[part]}
              order={filter.sort}
              garageId={garageId}
              today={today}
            />
          ))}
          <p className={styles.caution}>
            These days are worked out from the log; they advise and certify nothing. Where the
            maker’s manual or a look at the car says sooner, that holds.
          </p>
        </>
      )}
    </>
  );
}

function sentencesOf({ rows, next, counts }: DueList, today: string): string[] {
  const list = { soon: rows, more: next !== null, before: soonDay(today), counts };
  return dueListSentences(list, { asOf: today });
}

function NothingWatched({ garageId }: { garageId: string }) {
  return (
    <EmptyState
      title="Nothing to fall due yet"
      actions={
        <ButtonLink href={`/g/${garageId}` as Route} look="main">
          Choose a car
        </ButtonLink>
      }
    >
      <p>
        Open a car and go through the usual list: say what is watched on it and when each was last
        done. From then on this page tells what falls due in the whole garage, and when.
      </p>
    </EmptyState>
  );
}

function NoneFits({ onWhole }: { onWhole: () => void }) {
  return (
    <p className={styles.none} role="status">
      No line fits.{' '}
      <Button look="quiet" onClick={onWhole}>
        Show all cars, states and days
      </Button>
    </p>
  );
}

/** A reload, a bookmark and a link to somebody else show the same. */
function useInAddress(filter: DueFilter): void {
  useEffect(() => {
    const address = window.location.pathname + writeDueFilter(filter);
    if (address !== window.location.pathname + window.location.search)
      window.history.replaceState(null, '', address);
  }, [filter]);
}
