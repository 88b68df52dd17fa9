'use client';

import type { EventPage } from '@quartermark/api/client';
import { type ReactNode, useState } from 'react';
import { Choice, joinClasses, PageAnswer } from '../components/index.ts';
import { spanWords, whenWords } from '../event/event-words.ts';
import { PrintPress } from '../labels/PrintPress.tsx';
import { CarSheet } from './CarSheet.tsx';
import styles from './EventSheet.module.css';
import { sheetAnswer } from './sheet-words.ts';
import { type SheetTick, WorkSheet } from './WorkSheet.tsx';

const PAPERS = [
  { value: 'a4', words: 'A4' },
  { value: 'letter', words: 'US Letter' },
] as const;
type Paper = (typeof PAPERS)[number]['value'];

type EventSheetProps = {
  page: EventPage;
  /** civil date in the garage's zone, now */
  today: string;
  /** how the lines of work stand, by id; a line nobody ticked is not there */
  ticks: ReadonlyMap<string, SheetTick>;
  /** something was recorded on this phone since: said on every page */
  older?: boolean;
  /** the way back, beside Print */
  back?: ReactNode;
};

/** What is printed for an event: a page for each car, for whoever looks it over, and one of the work. */
export function EventSheet({ page, today, ticks, older = false, back }: EventSheetProps) {
  const { event, garage, cars } = page;
  // where oil is counted in US quarts, that paper is in the drawer
  const [paper, setPaper] = useState<Paper>(garage.volumeUnit === 'usQt' ? 'letter' : 'a4');
  return (
    <>
      <div className={styles.notPrinted}>
        <PageAnswer
          about={`${event.event.name}, ${whenWords(event.event, today)}`}
          beneath={<p>{spanWords(event.event)}</p>}
          action={
            <>
              <PrintPress />
              {back}
            </>
          }
        >
          {sheetAnswer(cars.length)}
        </PageAnswer>
        <Choice
          label="Paper"
          size="small"
          options={[...PAPERS]}
          value={paper}
          onChange={(chosen: Paper) => setPaper(chosen)}
        />
      </div>
      <div className={joinClasses(styles.sheet, styles[paper])}>
        {cars.map((car) => (
          <CarSheet key={car.carId} page={page} car={car} older={older} />
        ))}
        <WorkSheet page={page} ticks={ticks} older={older} />
      </div>
    </>
  );
}
