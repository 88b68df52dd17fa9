'use client';

import type { EventCar, EventPage } from '@quartermark/api/client';
import { type KeyboardEvent, useId, useState } from 'react';
import { Button } from '../components/index.ts';
import { CarNeeds } from './CarNeeds.tsx';
import styles from './OneCar.module.css';
import { isRead } from './of-page.ts';

type OneCarProps = { page: EventPage; first: string | null };

/** One car and what is asked of it; the others by the buttons, the list, or the arrow keys. */
export function OneCar({ page, first }: OneCarProps) {
  const { cars } = page;
  const [chosen, setChosen] = useState(first);
  // a car that left the event meanwhile gives way to the first
  const at = Math.max(
    0,
    cars.findIndex(({ carId }) => carId === chosen),
  );
  const car = cars[at];
  if (!car) return null;

  /** Beyond the last car comes the first again. */
  function show(index: number) {
    const next = cars.at(index % cars.length);
    if (!next) return;
    setChosen(next.carId);
    const address = new URL(window.location.href);
    address.searchParams.set('car', next.carId);
    window.history.replaceState(null, '', address);
  }

  function onKeyDown(event: KeyboardEvent<HTMLElement>) {
    const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    // where letters are written, or an option chosen, the arrows have work of their own
    const within =
      event.target instanceof Element && event.target.closest('input, select, textarea');
    if (step === undefined || within || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    show(at + step);
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the arrows repeat what the buttons inside do
    <div onKeyDown={onKeyDown}>
      {cars.length > 1 ? <Ways cars={cars} at={at} onShow={show} /> : null}
      <OneOrNothing key={car.carId} car={car} page={page} />
    </div>
  );
}

type WaysProps = { cars: readonly EventCar[]; at: number; onShow: (index: number) => void };

function Ways({ cars, at, onShow }: WaysProps) {
  const id = useId();
  return (
    <div className={styles.ways}>
      <Button onClick={() => onShow(at - 1)}>
        <span aria-hidden="true">‹</span>
        <span className={styles.unseen}>Previous car</span>
      </Button>
      <label htmlFor={id} className={styles.unseen}>
        Car
      </label>
      <select
        id={id}
        className={styles.select}
        value={at}
        onChange={(event) => onShow(Number(event.currentTarget.value))}
      >
        {cars.map(({ carId, name }, index) => (
          <option key={carId} value={index}>
            {index + 1} of {cars.length}: {name}
          </option>
        ))}
      </select>
      <Button onClick={() => onShow(at + 1)}>
        <span aria-hidden="true">›</span>
        <span className={styles.unseen}>Next car</span>
      </Button>
      <p aria-live="polite" className={styles.unseen}>
        {cars[at]?.name}
      </p>
    </div>
  );
}

function OneOrNothing({ car, page }: { car: EventCar; page: EventPage }) {
  if (isRead(car)) return <CarNeeds car={car} page={page} />;
  return (
    <>
      <h3>{car.name}</h3>
      <p>A part of its book cannot be read, so nobody can say whether it is ready.</p>
    </>
  );
}
