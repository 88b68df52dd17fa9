'use client';

import type { CarView, EntryView } from '@quartermark/api/client';
import { entryLine, flagSentence } from '@quartermark/engine/display';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, PageAnswer } from '../components/index.ts';
import { momentWords } from '../garage/moment-words.ts';
import { dayWords } from '../record/day-words.ts';
import styles from './EntryScreen.module.css';
import { RecordAgain, RemoveEntry } from './RemoveEntry.tsx';
import { Revisions } from './Revisions.tsx';

type EntryScreenProps = {
  garageId: string;
  entryId: string;
  /** null for an entry that belongs to no car */
  carId: string | null;
};

/** One entry: what it says, who wrote it and when, what it said before, and how to put it right. */
export function EntryScreen({ garageId, entryId, carId }: EntryScreenProps) {
  const trpc = useTRPC();
  const { data: shown } = useSuspenseQuery(trpc.entry.one.queryOptions({ garageId, entryId }));
  return carId === null ? (
    <Said garageId={garageId} shown={shown} view={null} />
  ) : (
    <OfCar garageId={garageId} shown={shown} carId={carId} />
  );
}

type OfCarProps = { garageId: string; shown: EntryView; carId: string };

function OfCar({ garageId, shown, carId }: OfCarProps) {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions({ garageId, carId }));
  return <Said garageId={garageId} shown={shown} view={view} />;
}

type SaidProps = { garageId: string; shown: EntryView; view: CarView | null };

function Said({ garageId, shown, view }: SaidProps) {
  const { entry, removed, recordedAt, recordedBy } = shown;
  const items = view?.items ?? [];
  const zone = view?.garage.zone ?? entry.zone;
  const { title, detail } = entryLine(entry, items);
  const flags = view?.analysis?.flags.filter((flag) => flag.entry === entry.id) ?? [];
  return (
    <>
      <PageAnswer
        about={view ? `${view.car.name}, ${dayWords(entry)}` : dayWords(entry)}
        beneath={`Recorded by ${recordedBy}, ${momentWords(recordedAt, zone)}`}
      >
        {removed ? 'Removed: ' : ''}
        {detail === '' ? title : `${title}: ${detail}`}
      </PageAnswer>
      <div className={styles.parts}>
        {entry.note ? <p className={styles.note}>{entry.note}</p> : null}
        {removed
          ? null
          : flags.map((flag) => (
              <p key={flag.code} className={styles.flag}>
                {flagSentence(flag)}
              </p>
            ))}
        <Ways garageId={garageId} shown={shown} view={view} />
        <Revisions garageId={garageId} entryId={entry.id} items={items} zone={zone} />
      </div>
    </>
  );
}

function Ways({ garageId, shown, view }: SaidProps) {
  const at = `/g/${garageId}`;
  if (!view) return <p>It belongs to no car, so nothing counts it.</p>;
  return (
    <div className={styles.ways}>
      {shown.removed ? (
        <RecordAgain shown={shown} view={view} />
      ) : (
        <>
          <ButtonLink href={`${at}/entry/${shown.entry.id}/amend` as Route} look="main">
            Amend
          </ButtonLink>
          <RemoveEntry shown={shown} view={view} />
        </>
      )}
      <ButtonLink href={`${at}/car/${view.carId}` as Route}>To the car</ButtonLink>
    </div>
  );
}
