'use client';

import type { CarView, OilPastView } from '@quartermark/api/client';
import type { Analysis } from '@quartermark/engine';
import {
  levelFractions,
  likelyLevelSentence,
  nextLookSentence,
  type OilFacts,
  offProcedureSentence,
  oilStopSentence,
  oilUseSentence,
  riseSentence,
  spanSentence,
} from '@quartermark/engine/display';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { Computed } from '../car/Computed.tsx';
import { LevelScale } from '../car/LevelScale.tsx';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, EmptyState, Notice, PageAnswer } from '../components/index.ts';
import { NotUpdated } from '../garage/NotUpdated.tsx';
import { Stick } from '../garage/Stick.tsx';
import { LevelChart } from './LevelChart.tsx';
import { OilNotices } from './OilNotices.tsx';
import styles from './OilScreen.module.css';
import { OilWhy } from './OilWhy.tsx';
import { oilFactsOf } from './oil-facts.ts';
import { StoryTable } from './StoryTable.tsx';
import { UseChart } from './UseChart.tsx';

export type OilWhere = { garageId: string; carId: string };

/** A car's oil: where it likely stands, how much it uses, what was read and poured in, and why. */
export function OilScreen(where: OilWhere) {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions(where));
  const { data: past } = useSuspenseQuery(trpc.oil.past.queryOptions(where));
  const oil = view.analysis?.oil;
  const facts = oilFactsOf(view);
  const own = `/g/${where.garageId}/car/${where.carId}`;
  return (
    <>
      <PageAnswer
        about={`${view.car.name}: oil`}
        beneath={
          <>
            {oil ? <Beneath oil={oil} facts={facts} /> : null}
            <Computed view={view} />
          </>
        }
        action={
          <ButtonLink
            href={`/g/${where.garageId}/record/${where.carId}/oilCheck` as Route}
            look="main"
          >
            Record a look
          </ButtonLink>
        }
      >
        {oil ? answerOf(oil, facts) : 'The figures of this car are being worked out.'}
      </PageAnswer>
      {view.failure ? (
        <NotUpdated failure={view.failure} carId={where.carId} garage={view.garage} />
      ) : null}
      <nav aria-label="This car" className={styles.ways}>
        <ButtonLink href={own as Route} look="quiet">
          To the car
        </ButtonLink>
        <ButtonLink href={`/g/${where.garageId}/oil` as Route} look="quiet">
          Compare the cars
        </ButtonLink>
        <ButtonLink href={`${own}/oil/stick` as Route} look="quiet">
          Learn the stick
        </ButtonLink>
      </nav>
      <OilNotices view={view} />
      {oil ? <Now view={view} oil={oil} /> : null}
      <Past past={past} view={view} facts={facts} />
      <OilWhy view={view} />
    </>
  );
}

type Oil = Analysis['oil'];

/** What cannot wait first, else where the level likely is. */
function answerOf(oil: Oil, facts: OilFacts): string {
  return oilStopSentence(oil) ?? likelyLevelSentence(oil, facts);
}

function Beneath({ oil, facts }: { oil: Oil; facts: OilFacts }) {
  const first = oilStopSentence(oil) === null ? null : likelyLevelSentence(oil, facts);
  const lines = [
    first,
    oilUseSentence(oil, facts),
    riseSentence(oil, facts),
    nextLookSentence(oil, facts),
  ].filter((line) => line !== null);
  return <p className={styles.beneath}>{lines.join(' ')}</p>;
}

function Now({ view, oil }: { view: CarView; oil: Oil }) {
  const facts = oilFactsOf(view);
  const level = view.analysis?.lastLevel ?? null;
  const lines = [offProcedureSentence(oil, facts), spanSentence(oil, facts)];
  return (
    <section aria-labelledby="oil-now" className={styles.section}>
      <h2 id="oil-now">Level now</h2>
      <div className={styles.now}>
        <LevelScale
          fraction={level?.fraction ?? null}
          mark={level?.mark ?? null}
          old={level?.changedSince ?? false}
          likely={oil.status === 'none' ? null : levelFractions(oil)}
        />
        <div className={styles.lines}>
          <p>
            {level ? (
              <>
                Last on the stick: <Stick level={level} garage={view.garage} />.
              </>
            ) : (
              'No reading on record.'
            )}
          </p>
          {level && oil.status !== 'none' ? (
            <p>The wedge is that reading, the bar where the oil likely is today.</p>
          ) : null}
          {lines.map((line) => (line === null ? null : <p key={line}>{line}</p>))}
        </div>
      </div>
    </section>
  );
}

type PastProps = { past: OilPastView; view: CarView; facts: OilFacts };

function Past({ past, view, facts }: PastProps) {
  const { story } = past;
  const odometer = view.analysis?.odometer ?? null;
  if (story === null)
    return (
      <Notice tone="alarm" title="The log of this car cannot be read.">
        Its page says which entry to mend; until then nothing of its oil is shown.
      </Notice>
    );
  if (story.entries.length === 0)
    return (
      <EmptyState title="Nothing of its oil is on record">
        <p>
          Read the stick by the car’s own procedure and record it, and record every bottle that goes
          in. After two readings some hundred kilometres apart the level and a rate begin to show.
        </p>
      </EmptyState>
    );
  return (
    <>
      <div className={styles.charts}>
        <UseChart story={story} odometer={odometer} facts={facts} />
        <LevelChart story={story} odometer={odometer} unit={facts.unit} />
      </div>
      <section aria-labelledby="oil-log" className={styles.section}>
        <h2 id="oil-log">Readings, bottles and changes</h2>
        <StoryTable story={story} facts={facts} view={view} />
      </section>
    </>
  );
}
