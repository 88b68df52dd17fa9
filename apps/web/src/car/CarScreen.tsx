'use client';

import type { CarView } from '@quartermark/api/client';
import { carSentences, withRoad } from '@quartermark/engine/display';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, PageAnswer } from '../components/index.ts';
import { NotUpdated } from '../garage/NotUpdated.tsx';
import { ownedByCar } from '../items/owned.ts';
import { OilNotices } from '../oil/OilNotices.tsx';
import { CarReadings } from './CarReadings.tsx';
import styles from './CarScreen.module.css';
import { Computed } from './Computed.tsx';
import { Fitted } from './Fitted.tsx';
import { GoOutAgain } from './GoOutAgain.tsx';
import { History } from './History.tsx';
import type { HistoryFilter } from './history-filter.ts';
import { InTheWay } from './InTheWay.tsx';
import { ItemList } from './ItemList.tsx';
import { PlanAsks } from './PlanAsks.tsx';
import { RoadAsks } from './RoadAsks.tsx';
import { ToMend } from './ToMend.tsx';

type CarScreenProps = { garageId: string; carId: string; filter: HistoryFilter };

/** One car: what has run out and what will, what was last read, what to mend, and its history. */
export function CarScreen({ garageId, carId, filter }: CarScreenProps) {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions({ garageId, carId }));
  const [first, ...rest] = sentencesOf(view);
  return (
    <>
      <PageAnswer
        about={view.car.name}
        beneath={
          <>
            <GoOutAgain view={view} />
            {rest.length > 0 ? <p className={styles.rest}>{rest.join(' ')}</p> : null}
            <Computed view={view} />
          </>
        }
        action={
          <ButtonLink href={`/g/${garageId}/record/${carId}` as Route} look="main">
            What happened
          </ButtonLink>
        }
      >
        {first}
      </PageAnswer>
      {view.failure ? (
        <NotUpdated failure={view.failure} carId={carId} garage={view.garage} />
      ) : null}
      <nav aria-label="This car" className={styles.ways}>
        <ButtonLink href={`/g/${garageId}/car/${carId}/oil` as Route} look="quiet">
          Oil
        </ButtonLink>
        <ButtonLink href={`/g/${garageId}/car/${carId}/spec` as Route} look="quiet">
          Spec sheet
        </ButtonLink>
        <ButtonLink href={`/g/${garageId}/car/${carId}/what-if` as Route} look="quiet">
          What if
        </ButtonLink>
        <ButtonLink href={`/g/${garageId}/labels` as Route} look="quiet">
          Labels
        </ButtonLink>
        <a href="#history">History</a>
      </nav>
      <RoadAsks view={view} />
      <PlanAsks view={view} />
      <InTheWay view={view} />
      <OilNotices view={view} />
      <div className={styles.parts}>
        <ItemList owned={ownedByCar(view)} />
        <CarReadings view={view} />
        <Fitted view={view} />
        <ToMend view={view} />
      </div>
      <History view={view} filter={filter} />
    </>
  );
}

function sentencesOf({ analysis, car, items, failure, road }: CarView): string[] {
  if (analysis) return withRoad(road, analysis, carSentences(analysis, { unit: car.unit, items }));
  return failure
    ? ['Nothing can be said of this car now: its figures could not be worked out.']
    : ['The figures of this car are being worked out.'];
}
