'use client';

import type { Route } from 'next';
import Link from 'next/link';
import { useState } from 'react';
import { SelectField, TextField, Tick } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import styles from './Crew.module.css';
import type { CrewFields } from './going-fields.ts';

export type Person = { gearId: string; name: string };

type CrewProps = {
  garageId: string;
  /** those that go, by their names */
  cars: readonly { id: string; name: string }[];
  people: readonly Person[];
  crew: CrewFields;
  onChange: (crew: CrewFields) => void;
  error: string | undefined;
};

/** Beyond so many they are looked for by their name. */
const FEW_PEOPLE = 10;

/** Who drives which car: a car is chosen, then its people are ticked. */
export function Crew({ garageId, cars, people, crew, onChange, error }: CrewProps) {
  const [chosen, setChosen] = useState('');
  const [find, setFind] = useState('');
  const car = cars.find(({ id }) => id === chosen) ?? cars[0];
  const named = cars.filter(({ id }) => (crew[id] ?? []).length > 0).length;
  const now = named === 0 ? 'not said yet' : `said for ${named} of ${cars.length}`;
  return (
    <Fold title="Who drives" now={now} wrong={error !== undefined}>
      {car === undefined ? (
        <p>Tick the cars that go first.</p>
      ) : (
        <>
          {cars.length > 1 ? (
            <SelectField
              label="Which car"
              name="crewCar"
              options={cars.map(({ id, name }) => ({
                value: id,
                words: `${name}: ${namesOf(crew[id] ?? [], people)}`,
              }))}
              value={car.id}
              onChange={(event) => setChosen(event.currentTarget.value)}
            />
          ) : null}
          {people.length > FEW_PEOPLE ? (
            <TextField
              label="Find somebody"
              optional
              autoComplete="off"
              name="findPerson"
              value={find}
              onChange={(event) => setFind(event.currentTarget.value)}
            />
          ) : null}
          <PeopleTicks
            of={car.name}
            people={people}
            find={find}
            chosen={crew[car.id] ?? []}
            onChange={(driving) => onChange({ ...crew, [car.id]: driving })}
          />
        </>
      )}
      {error ? (
        <p role="alert" className={styles.error}>
          {error}
        </p>
      ) : null}
      <p>
        <Link href={`/g/${garageId}/gear/add?kind=person` as Route} prefetch={false}>
          Add somebody
        </Link>
        . What stands here is kept until you come back.
      </p>
    </Fold>
  );
}

function namesOf(ids: readonly string[], people: readonly Person[]): string {
  if (ids.length === 0) return 'not said';
  return ids.map((id) => nameOf(id, people)).join(', ');
}

const nameOf = (id: string, people: readonly Person[]): string =>
  people.find(({ gearId }) => gearId === id)?.name ?? 'somebody who has left';

type PeopleTicksProps = {
  /** name of the car */
  of: string;
  people: readonly Person[];
  /** letters of the names to show */
  find: string;
  chosen: readonly string[];
  onChange: (chosen: string[]) => void;
};

/** Those who can drive; who is ticked stays in sight whatever is looked for. */
function PeopleTicks({ of, people, find, chosen, onChange }: PeopleTicksProps) {
  const left = chosen.filter((id) => !people.some(({ gearId }) => gearId === id));
  const wanted = find.trim().toLowerCase();
  const shown = [
    ...people.filter(
      ({ gearId, name }) => chosen.includes(gearId) || name.toLowerCase().includes(wanted),
    ),
    ...left.map((gearId) => ({ gearId, name: nameOf(gearId, people) })),
  ];
  return (
    <fieldset className={styles.people}>
      <legend>Who drives {of}</legend>
      {people.length === 0 ? <p>Nobody is on record in this garage yet.</p> : null}
      {people.length > 0 && shown.length === 0 ? <p>Nobody has a name like that.</p> : null}
      {shown.map(({ gearId, name }) => (
        <Tick
          key={gearId}
          label={name}
          checked={chosen.includes(gearId)}
          onChange={(on) =>
            onChange(on ? [...chosen, gearId] : chosen.filter((id) => id !== gearId))
          }
        />
      ))}
    </fieldset>
  );
}
