'use client';

import { useQuery } from '@tanstack/react-query';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { Button } from '../components/index.ts';
import styles from './AirScreen.module.css';
import { pressureIn, type Typed } from './air-fields.ts';

type SpecPressuresProps = {
  garageId: string;
  carId: string;
  onLeast: (least: Typed<'bar' | 'psi' | 'kPa'>) => void;
};

/** What the car's spec sheet says of pressures, and the way to take one for the least. */
export function SpecPressures({ garageId, carId, onLeast }: SpecPressuresProps) {
  const trpc = useTRPC();
  const { data, isError, error } = useQuery(trpc.spec.view.queryOptions({ garageId, carId }));
  if (isError) return <p>Its spec sheet could not be had. {refusalWords(error).message}</p>;
  if (!data) return <p className={styles.soft}>Looking at its spec sheet …</p>;
  const lines = data.sheet.lines.filter(({ group }) => group === 'pressures');
  if (lines.length === 0)
    return <p className={styles.soft}>Its spec sheet says nothing of pressures.</p>;
  return (
    <ul className={styles.spec}>
      {lines.map(({ what, value, source }) => {
        const typed = pressureIn(value);
        return (
          <li key={`${what} ${value}`}>
            {what}: {value}
            {source === undefined ? ' (unverified)' : `, ${source}`}
            {typed === null ? null : (
              <Button look="quiet" onClick={() => onLeast(typed)}>
                Take it as the least
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
