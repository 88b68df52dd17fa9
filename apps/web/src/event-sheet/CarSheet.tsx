import type { EventCar, EventPage } from '@quartermark/api/client';
import {
  findingWords,
  formatDay,
  incidentWords,
  needStatusWords,
  readyWords,
  SEVERITY_WORDS,
} from '@quartermark/engine/display';
import type { CarReadiness, InspectorFacts } from '@quartermark/engine/readiness';
import { joinClasses, StateWord } from '../components/index.ts';
import styles from './EventSheet.module.css';
import { PlaceRows } from './PlaceRows.tsx';
import { SheetPage } from './SheetPage.tsx';
import { factLines } from './sheet-facts.ts';
import { rulesWords } from './sheet-words.ts';

type CarSheetProps = { page: EventPage; car: EventCar; older: boolean };

/** A car's page for whoever looks it over. */
export function CarSheet({ page, car, older }: CarSheetProps) {
  const { readiness, facts } = car;
  return (
    <SheetPage page={page} title={car.name} older={older}>
      <p className={styles.verdict}>
        {readiness === null ? (
          'Not on record: a part of its log cannot be read, so nobody can say.'
        ) : (
          <StateWord {...verdictOf(page, readiness)} />
        )}
      </p>
      <p>Asked: {rulesWords(page.requirements)}.</p>
      {readiness === null ? null : <OpenNeeds readiness={readiness} />}
      {facts === null ? null : <Facts facts={facts} unit={car.unit} />}
      {readiness === null ? null : <TakenOn readiness={readiness} />}
    </SheetPage>
  );
}

function verdictOf({ garage }: EventPage, { verdict }: CarReadiness) {
  const { mark, word } = readyWords(verdict, { asOf: garage.today });
  return { kind: mark, words: word.includes('by the log') ? word : `${word}, by the log` };
}

/** What is asked and not fine, so that nobody takes the list above for all there is. */
function OpenNeeds({ readiness }: { readiness: CarReadiness }) {
  const open = readiness.needs.filter(
    ({ status, weight, accepted }) =>
      status !== 'met' && weight === 'blocking' && accepted === null,
  );
  if (open.length === 0) return <p>Nothing that is asked stands open.</p>;
  return (
    <section>
      <h3>Asked, and not fine today</h3>
      <ul className={joinClasses(styles.lines, styles.twoColumns)}>
        {open.map(({ id, title, status }) => (
          <li key={id}>
            {title}: <strong>{needStatusWords(status).word}</strong>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Facts({ facts, unit }: { facts: InspectorFacts; unit: 'km' | 'mi' }) {
  return (
    <>
      <dl className={styles.facts}>
        {factLines(facts, unit).map(({ what, words, open }) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd className={open ? styles.open : undefined}>{words}</dd>
          </div>
        ))}
      </dl>
      <PlaceRows title="Brake pads, last measured" places={facts.pads} />
      <PlaceRows title="Tread, last measured" places={facts.tread} />
      <Findings facts={facts} />
    </>
  );
}

function Findings({ facts: { findings, incidents } }: { facts: InspectorFacts }) {
  return (
    <section>
      <h3>Open findings</h3>
      {findings.length + incidents.length === 0 ? (
        <p>None on record.</p>
      ) : (
        <ul className={styles.lines}>
          {incidents.map((one) => (
            <li key={one.entry}>{incidentWords(one)}</li>
          ))}
          {findings.map((one) => (
            <li key={one.entry}>
              <strong>{SEVERITY_WORDS[one.severity]}:</strong> {findingWords(one)}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** Needs that somebody took upon himself stay visible, with name and reason. */
function TakenOn({ readiness }: { readiness: CarReadiness }) {
  const taken = readiness.needs.filter(({ accepted }) => accepted !== null);
  if (taken.length === 0) return null;
  return (
    <section>
      <h3>Taken on for this event</h3>
      <ul className={styles.lines}>
        {taken.map(({ id, title, accepted }) => (
          <li key={id}>
            {title}: taken on by {accepted?.by} on {formatDay(accepted?.on ?? '')}, because{' '}
            {accepted?.because}
          </li>
        ))}
      </ul>
    </section>
  );
}
