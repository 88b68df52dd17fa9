'use client';

import type { EventView } from '@quartermark/api/client';
import { outlookMark, outlookSentences, readyWords } from '@quartermark/engine/display';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { Button, StateWord } from '../components/index.ts';
import styles from './CarOutlooks.module.css';

type CarOutlooksProps = {
  garageId: string;
  event: EventView;
  names: Readonly<Record<string, string>>;
  /** cars told without being asked for */
  unasked: readonly string[];
};

/** Of each car that goes to an event: whether it is ready, and what runs out before it is over. */
export function CarOutlooks({ garageId, event: one, names, unasked }: CarOutlooksProps) {
  const { eventId, event } = one;
  const cars = event.cars.filter((carId) => names[carId] !== undefined);
  if (cars.length === 0) return null;
  return (
    <section className={styles.cars} aria-label={`What runs out before the end of ${event.name}`}>
      {cars.map((carId) => (
        <CarOutlook
          key={carId}
          garageId={garageId}
          carId={carId}
          eventId={eventId}
          name={names[carId] ?? ''}
          unasked={unasked.includes(carId)}
        />
      ))}
    </section>
  );
}

type CarOutlookProps = {
  garageId: string;
  carId: string;
  eventId: string;
  name: string;
  unasked: boolean;
};

function CarOutlook({ garageId, carId, eventId, name, unasked }: CarOutlookProps) {
  const trpc = useTRPC();
  const [wanted, setWanted] = useState(unasked);
  const { data, isError, error, refetch } = useQuery({
    ...trpc.forecast.atEvents.queryOptions({ garageId, carId }),
    enabled: wanted,
  });
  if (!wanted)
    return (
      <p>
        <Button look="quiet" onClick={() => setWanted(true)} className={styles.press}>
          {name}: what runs out?
        </Button>
      </p>
    );
  if (isError)
    return (
      <p>
        {name}: not known. {refusalWords(error).message}{' '}
        <Button look="quiet" onClick={() => void refetch()} className={styles.press}>
          Try again
        </Button>
      </p>
    );
  if (!data) return <p className={styles.pending}>{name}: being worked out …</p>;
  if (data.outlooks === null)
    return <p>{name}: a part of its log cannot be read, so nobody can say.</p>;
  const outlook = data.outlooks.find(({ id }) => id === eventId);
  if (!outlook) return <p className={styles.pending}>{name}: told once its turn is nearer.</p>;
  const spoken = { asOf: data.garage.today };
  // of an event that is near, whether the car is ready for it comes first
  const stands = outlook.verdict && readyWords(outlook.verdict, spoken);
  const words = outlookSentences(outlook, spoken).join(' ');
  const unsaid = outlook.withUse ? '' : ' Only its days count: what it does there is not said.';
  return (
    <p>
      <StateWord
        kind={stands?.mark ?? outlookMark(outlook)}
        words={stands ? `${name}: ${stands.word}` : name}
        detail={words + unsaid}
      />
    </p>
  );
}
