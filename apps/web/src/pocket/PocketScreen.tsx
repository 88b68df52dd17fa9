'use client';

import { useEffect, useState } from 'react';
import { newId } from '../client/make-id.ts';
import { Button, Notice } from '../components/index.ts';
import { PocketUrgent } from '../urgent/PocketUrgent.tsx';
import { CarChooser } from './CarChooser.tsx';
import { daysToShow } from './event/day-of.ts';
import { PocketEvents } from './event/PocketEvents.tsx';
import type { Begin, FastProps } from './fast/begin.ts';
import { FastFinding } from './fast/FastFinding.tsx';
import { FastFuel } from './fast/FastFuel.tsx';
import { FastOdometer } from './fast/FastOdometer.tsx';
import { FastOilAdded } from './fast/FastOilAdded.tsx';
import { FastOilCheck } from './fast/FastOilCheck.tsx';
import { FastSession } from './fast/FastSession.tsx';
import { FastWheels } from './fast/FastWheels.tsx';
import { Home } from './Home.tsx';
import { More } from './More.tsx';
import styles from './Pocket.module.css';
import { PocketWords } from './PocketWords.tsx';
import { SavedLine } from './SavedLine.tsx';
import { type Chosen, chosenCar, rememberCar, rememberedCar } from './sheet/chosen-car.ts';
import { momentIn } from './sheet/garage-clock.ts';
import type { KeptSheet } from './sheet/pocket-sheet.ts';
import { useSheet } from './sheet/use-sheet.ts';
import { usePocketSave } from './use-pocket-save.ts';
import { FAST, type Fast, goTo, useAsked, useView } from './view-of-address.ts';
import { WaitsLine } from './WaitsLine.tsx';
import { WaitingList } from './waiting/WaitingList.tsx';

const FORM: Readonly<Record<Fast, (props: FastProps) => React.ReactNode>> = {
  oilCheck: FastOilCheck,
  oilTopUp: FastOilAdded,
  session: FastSession,
  wheels: FastWheels,
  fuel: FastFuel,
  finding: FastFinding,
  odometer: FastOdometer,
};
const QUESTION: Readonly<Record<Fast, string>> = {
  oilCheck: 'Where does the oil stand?',
  oilTopUp: 'How much oil went in?',
  session: 'Session done',
  wheels: 'What was done to the wheels?',
  fuel: 'How much fuel went in?',
  finding: 'What did you find?',
  odometer: 'What does the odometer show?',
};

/** Recording with one hand, with or without signal, from what this phone keeps. */
export function PocketScreen() {
  const sheet = useSheet();
  const { kept } = sheet;
  const asked = useAsked();
  const [picked, setPicked] = useState<string | null>(null);
  const label = asked?.carId ?? null;
  useEffect(() => {
    if (label !== null) rememberCar(label);
  }, [label]);
  const chosen = kept && asked ? chosenCar(kept.sheet, picked ?? label, rememberedCar()) : null;
  function pick(carId: string) {
    setPicked(carId);
    const here = chosen?.garage.cars.some(({ view }) => view.carId === carId) ?? false;
    // another garage's events may not have come along
    if (!here) void sheet.refresh();
  }
  return (
    <main id="content" tabIndex={-1} className={styles.page}>
      <div className={styles.notPrinted}>
        <PocketWords sheet={sheet} wanted={asked?.wanted ?? null} empty={chosen === null} />
      </div>
      <Inside kept={kept} chosen={chosen} onCar={pick} refresh={sheet.refresh} />
    </main>
  );
}

type InsideProps = {
  kept: KeptSheet | null;
  chosen: Chosen | null;
  onCar: (carId: string) => void;
  refresh: () => Promise<void>;
};

function Inside({ kept, chosen, onCar, refresh }: InsideProps) {
  const view = useView();
  const saving = usePocketSave(chosen?.garage.garage.id ?? null);
  const { busy, trouble, saved, undone, undo } = saving;
  // what went wrong on one screen is not said on another
  const [shownOn, setShownOn] = useState(view);
  if (shownOn !== view) {
    setShownOn(view);
    saving.clear();
  }
  const nowMs = useNow();
  if (view === 'waiting') return <WaitingList sheet={kept?.sheet ?? null} />;
  if (kept === null || chosen === null) return <WaitsLine />;

  const zone = chosen.garage.garage.zone;
  const { on: today } = momentIn(nowMs + kept.aheadMs, zone);
  const begin = (): Begin => ({
    id: newId(),
    ...momentIn(Date.now() + kept.aheadMs, zone),
    zone,
    car: chosen.car.view.carId,
  });
  const common = { garage: chosen.garage, car: chosen.car, begin, busy };

  if (view === 'cars')
    return (
      <CarChooser
        sheet={kept.sheet}
        chosenId={chosen.car.view.carId}
        onChosen={(carId) => {
          onCar(carId);
          goTo('home');
        }}
      />
    );
  const [day, ...laterDays] = daysToShow(chosen.garage.days, today);
  if (day && (view === 'event' || view === 'paper'))
    return (
      <PocketEvents
        days={[day, ...laterDays]}
        today={today}
        aheadMs={kept.aheadMs}
        paper={view === 'paper'}
        refresh={refresh}
      />
    );
  if (view === 'more') return <More chosen={chosen} today={today} onSaved={saving.note} />;
  if (FAST.some((fast) => fast === view)) {
    const fast = view as Fast;
    const Form = FORM[fast];
    return (
      <>
        <div className={styles.top}>
          <p className={styles.event}>{chosen.car.view.car.name}</p>
          <h1>{QUESTION[fast]}</h1>
        </div>
        <div className={styles.low}>
          {trouble === null ? null : <Notice tone="alarm">{trouble}</Notice>}
          <Form
            // a car's own start: another car begins anew
            key={`${fast}:${chosen.car.view.carId}`}
            {...common}
            save={async (entry, photos) => {
              if (await saving.save(entry, photos)) goTo('home');
            }}
          />
          <p className={styles.back}>
            <Button onClick={() => goTo('home')}>Leave without saving</Button>
          </p>
        </div>
      </>
    );
  }
  return (
    <>
      <SavedLine saved={saved} undone={undone} undo={undo} />
      {trouble === null ? null : <Notice tone="alarm">{trouble}</Notice>}
      <WaitsLine />
      <PocketUrgent garage={chosen.garage} chosenId={chosen.car.view.carId} onCar={onCar} />
      <Home
        chosen={chosen}
        today={today}
        next={day ?? null}
        several={kept.sheet.garages.reduce((sum, { cars }) => sum + cars.length, 0) > 1}
      />
    </>
  );
}

const MINUTE_MS = 60_000;

/** This phone's clock, to the minute: a page that stays open over midnight knows the new day. */
function useNow(): number {
  const [nowMs, setNowMs] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNowMs(Date.now()), MINUTE_MS);
    return () => clearInterval(timer);
  }, []);
  return nowMs;
}
