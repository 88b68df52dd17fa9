'use client';

import type { EntryView } from '@quartermark/api/client';
import { entryLine, flagSentence } from '@quartermark/engine/display';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, PageAnswer } from '../components/index.ts';
import { momentWords } from '../garage/moment-words.ts';
import { aboutWhat, pageOf } from '../record/about-what.ts';
import { dayWords } from '../record/day-words.ts';
import { SmallPhotos } from '../record/SmallPhotos.tsx';
import { usePartNames } from '../record/use-part-names.ts';
import styles from './EntryScreen.module.css';
import { RecordAgain, RemoveEntry } from './RemoveEntry.tsx';
import { Revisions } from './Revisions.tsx';
import { NO_OWNER, type Owner, useCarOwner, useGearOwner } from './use-owner.ts';

type EntryScreenProps = { garageId: string; entryId: string };

/** One entry: what it says, who wrote it and when, what it said before, and how to put it right. */
export function EntryScreen({ garageId, entryId }: EntryScreenProps) {
  const trpc = useTRPC();
  const { data: shown } = useSuspenseQuery(trpc.entry.one.queryOptions({ garageId, entryId }));
  const what = aboutWhat(shown.entry);
  if (what === null) return <Said garageId={garageId} shown={shown} owner={NO_OWNER} />;
  return 'carId' in what ? (
    <OfCar garageId={garageId} shown={shown} carId={what.carId} />
  ) : (
    <OfGear garageId={garageId} shown={shown} gearId={what.gearId} />
  );
}

type Shown = { garageId: string; shown: EntryView };

function OfCar({ garageId, carId, shown }: Shown & { carId: string }) {
  return <Said garageId={garageId} shown={shown} owner={useCarOwner({ garageId, carId })} />;
}

function OfGear({ garageId, gearId, shown }: Shown & { gearId: string }) {
  return <Said garageId={garageId} shown={shown} owner={useGearOwner({ garageId, gearId })} />;
}

type SaidProps = Shown & { owner: Owner };

function Said({ garageId, shown, owner }: SaidProps) {
  const { entry, removed, recordedAt, recordedBy } = shown;
  const { items, name } = owner;
  const zone = owner.zone ?? entry.zone;
  const { title, detail } = entryLine(entry, items, usePartNames(garageId, entry));
  const flags = owner.flags.filter((flag) => flag.entry === entry.id);
  return (
    <>
      <PageAnswer
        about={name === null ? dayWords(entry) : `${name}, ${dayWords(entry)}`}
        beneath={`Recorded by ${recordedBy}, ${momentWords(recordedAt, zone)}`}
      >
        {removed ? 'Removed: ' : ''}
        {detail === '' ? title : `${title}: ${detail}`}
      </PageAnswer>
      <div className={styles.parts}>
        {entry.note ? <p className={styles.note}>{entry.note}</p> : null}
        <SmallPhotos garageId={garageId} ids={entry.photos} linked />
        {removed
          ? null
          : flags.map((flag) => (
              <p key={flag.code} className={styles.flag}>
                {flagSentence(flag)}
              </p>
            ))}
        <Ways garageId={garageId} shown={shown} owner={owner} />
        <Revisions garageId={garageId} entryId={entry.id} items={items} zone={zone} />
      </div>
    </>
  );
}

/** What a finding or an incident asks for, beside being put right. */
const isAnswered = ({ entry, removed }: EntryView) =>
  !removed && entry.car !== undefined && (entry.kind === 'finding' || entry.kind === 'incident');

function Ways({ garageId, shown, owner: { carId, name } }: SaidProps) {
  const at = `/g/${garageId}`;
  const { entry } = shown;
  const to = `${at}${pageOf(aboutWhat(entry))}`;
  return (
    <div className={styles.ways}>
      {shown.removed ? (
        <RecordAgain garageId={garageId} shown={shown} carId={carId} to={to} />
      ) : (
        <>
          <ButtonLink href={`${at}/entry/${entry.id}/amend` as Route} look="main">
            Amend
          </ButtonLink>
          <RemoveEntry garageId={garageId} shown={shown} carId={carId} to={to} />
        </>
      )}
      {isAnswered(shown) ? (
        <ButtonLink href={`${at}/record/${entry.car}/answer?notice=${entry.id}` as Route}>
          Answer it
        </ButtonLink>
      ) : null}
      <ButtonLink href={to as Route}>{wayBack(carId, name)}</ButtonLink>
    </div>
  );
}

function wayBack(carId: string | null, name: string | null): string {
  if (carId !== null) return 'To the car';
  return name === null ? 'To the garage' : `To ${name}`;
}
