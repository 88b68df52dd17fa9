'use client';

import type { EventPage } from '@quartermark/api/client';
import {
  firstItem,
  formatDay,
  KIND_WORDS,
  likelyLevelWords,
  oilStopSentence,
  openSentences,
  stopSentences,
} from '@quartermark/engine/display';
import { Button, StateWord } from '../components/index.ts';
import { Stick } from '../garage/Stick.tsx';
import { EventDoor } from './event/EventDoor.tsx';
import styles from './Pocket.module.css';
import { ScreenStays } from './ScreenStays.tsx';
import type { Chosen } from './sheet/chosen-car.ts';
import { FAST, type Fast, goTo } from './view-of-address.ts';

const WORDS: Readonly<Record<Fast, string>> = {
  oilCheck: KIND_WORDS.oilCheck,
  oilTopUp: KIND_WORDS.oilTopUp,
  session: 'Session done',
  wheels: KIND_WORDS.wheels,
  fuel: KIND_WORDS.fuel,
  finding: KIND_WORDS.finding,
  odometer: KIND_WORDS.odometer,
};

type HomeProps = {
  chosen: Chosen;
  today: string;
  several: boolean;
  /** the event that runs or comes next; null: none within two weeks */
  next: EventPage | null;
};

/** The car, what is known of its oil, and the targets, which end where the thumb is. */
export function Home({ chosen, today, several, next }: HomeProps) {
  const { view } = chosen.car;
  const garage = { ...chosen.garage.garage, today };
  const level = view.analysis?.lastLevel ?? null;
  const oil = view.analysis?.oil ?? null;
  const likely =
    oil === null || oil.status === 'none' ? null : likelyLevelWords(oil, garage.volumeUnit);
  const oilStop = oil && oilStopSentence(oil);
  const stops = [
    ...(view.analysis ? stopSentences(view.analysis, view.car.unit) : []),
    ...(oilStop ? [oilStop] : []),
  ];
  const open = view.analysis ? openSentences(view.analysis, view.car.unit) : [];
  // the door says the same of an event that this phone keeps
  const event = next === null ? eventOf(chosen, today) : null;
  return (
    <>
      <div className={styles.top}>
        {event === null ? null : <p className={styles.event}>{event}</p>}
        {next === null ? null : <EventDoor page={next} today={today} />}
        <h1 className={styles.carName}>
          {several ? (
            <button type="button" className={styles.chooser} onClick={() => goTo('cars')}>
              {view.car.name}
              <span className={styles.chooserHint}>Another car</span>
            </button>
          ) : (
            view.car.name
          )}
        </h1>
        {stops.map((sentence) => (
          <p key={sentence} className={styles.event}>
            {sentence}
          </p>
        ))}
        {open.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
        <FirstItem chosen={chosen} today={today} />
        <p>
          Oil: {likely === null ? null : `${likely}. Last on the stick: `}
          {level === null ? (
            noLevel(view.analysis !== null)
          ) : (
            <Stick level={level} garage={garage} />
          )}
        </p>
      </div>
      <nav aria-label="What happened" className={styles.targets}>
        {FAST.map((fast) => (
          <Button key={fast} className={styles.target} onClick={() => goTo(fast)}>
            {WORDS[fast]}
          </Button>
        ))}
        <Button className={styles.target} onClick={() => goTo('more')}>
          More
        </Button>
      </nav>
      <ScreenStays />
    </>
  );
}

type FirstItemProps = { chosen: Chosen; today: string };

/** What runs out first, as the garage says it; with its day where this phone has asked on an earlier one. */
function FirstItem({ chosen: { car }, today }: FirstItemProps) {
  const { analysis, items, car: facts } = car.view;
  const first = analysis && firstItem(analysis, { unit: facts.unit, items });
  if (!first) return null;
  const { mark, word, detail } = first.words;
  const asOf = analysis.asOf < today ? [`as of ${formatDay(analysis.asOf)}`] : [];
  const behind = [...(detail === '' ? [] : [detail]), ...asOf].join(', ');
  return (
    <p>
      <StateWord kind={mark} words={`${first.name}, ${lower(word)}`} detail={behind} />
    </p>
  );
}

const lower = (word: string) => word.charAt(0).toLowerCase() + word.slice(1);

const noLevel = (workedOut: boolean) =>
  workedOut ? 'no reading on record.' : 'not worked out yet when this phone last asked.';

/** The event of the day that this car goes to, by its name; null on any other day. */
function eventOf({ garage, car }: Chosen, today: string): string | null {
  const on = garage.events.find(({ event: { start, end, cars } }) => {
    const goes = cars.length === 0 || cars.includes(car.view.carId);
    return goes && start <= today && today <= (end ?? start);
  });
  if (!on) return null;
  const { name, end } = on.event;
  return end === undefined || end === today ? name : `${name}, until ${formatDay(end)}`;
}
