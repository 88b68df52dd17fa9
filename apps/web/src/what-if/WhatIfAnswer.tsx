import type { WhatIfView } from '@quartermark/api/client';
import { type Standing, sideWords } from '@quartermark/engine/display';
import { type AddedUse, addedId, type WhatIf, type WhatIfLine } from '@quartermark/engine/what-if';
import type { Route } from 'next';
import { ButtonLink, StateWord } from '../components/index.ts';
import { addEventAddress } from '../event/event-address.ts';
import { EVENT_NAME, spanWords } from '../event/event-words.ts';
import { plannedUseWords } from '../event/planned-use-words.ts';
import { ChangedLine } from './ChangedLine.tsx';
import { RunsOutList } from './RunsOutList.tsx';
import styles from './WhatIfAnswer.module.css';

type WhatIfAnswerProps = { view: WhatIfView; answer: WhatIf; asked: readonly AddedUse[] };

/** What runs out first, then the dates that move beside those that do not, then the way to the calendar. */
export function WhatIfAnswer({ view, answer, asked }: WhatIfAnswerProps) {
  const { unit, garage, carId } = view;
  const { lines, asOf, laidUp } = answer;
  const on: Standing = { unit, laidUp, asOf };
  const href = `/g/${garage.id}/car/${carId}`;
  const changed = lines.filter((line) => line.changed);
  const unsure = lines.filter((line) => !line.changed && line.after.state === 'unknown');
  const same = lines.filter((line) => !line.changed && line.after.state !== 'unknown');
  return (
    <>
      <RunsOutList answer={answer} asked={asked} itemHref={(id) => `${href}/item/${id}`} />
      {changed.length > 0 ? (
        <section className={styles.part}>
          <h2>What changes</h2>
          <ul className={styles.list}>
            {changed.map((line) => (
              <ChangedLine key={line.id} line={line} on={on} />
            ))}
          </ul>
          {changed.some(isLater) ? (
            <p className={styles.note}>
              A day may also move back: what is on the calendar takes the place of some of what
              would have come unplanned.
            </p>
          ) : null}
        </section>
      ) : null}
      <Same title="What stays as it is" lines={same} on={on} />
      <Same title="Not on record, or only in part" lines={unsure} on={on} />
      <section className={styles.part}>
        <h2>Is it to be?</h2>
        <ul className={styles.list}>
          {asked.map((line, at) => (
            <li key={addedId(at)} className={styles.plan}>
              <span>
                {EVENT_NAME[line.sort]}, {spanWords(line)}: {plannedUseWords(line.use)}
              </span>
              <ButtonLink href={addEventAddress(garage.id, line, carId) as Route}>
                Put it on the calendar
              </ButtonLink>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

const isLater = ({ before, after }: WhatIfLine) =>
  before.dates.likely !== null &&
  (after.dates.likely === null || after.dates.likely > before.dates.likely);

type SameProps = { title: string; lines: readonly WhatIfLine[]; on: Standing };

function Same({ title, lines, on }: SameProps) {
  if (lines.length === 0) return null;
  return (
    <section className={styles.part}>
      <h2>{title}</h2>
      <ul className={styles.list}>
        {lines.map(({ id, name, after }) => {
          const { mark, word, detail } = sideWords(after, on);
          return (
            <li key={id} className={styles.same}>
              <h3>{name}</h3>
              <StateWord kind={mark} words={word} detail={detail} />
            </li>
          );
        })}
      </ul>
    </section>
  );
}
