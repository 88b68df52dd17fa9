import type { CarView, OpenMatter } from '@quartermark/api/client';
import type { Analysis } from '@quartermark/engine';
import { wakeStepWords, wheelsWords } from '@quartermark/engine/display';
import type { Route } from 'next';
import { ButtonLink, StateWord } from '../components/index.ts';
import type { MarkKind } from '../components/StateMark.tsx';
import { RANKS, rankOf } from '../finding/finding-words.ts';
import { MatterLine } from '../finding/MatterLine.tsx';
import styles from './InTheWay.module.css';

type Matters = Analysis['matters'];

/**
 * What stands in the way of a car beside what wears out: what forbids driving first, then what is to be
 * minded. Absent while there is nothing.
 */
export function InTheWay({ view }: { view: CarView }) {
  const { analysis } = view;
  if (!analysis) return null;
  const rows = mattersOf(view, analysis.matters);
  const { wheels, wakeSteps } = analysis.matters;
  const forbids = (row: OpenMatter) => ['doNotDrive', 'incident'].includes(rankOf(row));
  const wheelsTell = !['notOnRecord', 'rechecked'].includes(wheels.state);
  if (rows.length === 0 && !wheelsTell && wakeSteps.length === 0) return null;
  return (
    <section aria-label="What stands in the way" className={styles.way}>
      <h2>What stands in the way</h2>
      <ul className={styles.list}>
        {rows.filter(forbids).map((row) => (
          <MatterLine key={row.matter.entry} row={row} garage={view.garage} whose={false} />
        ))}
        {wheelsTell ? <Wheels view={view} wheels={wheels} /> : null}
        {wakeSteps.length > 0 ? <WakeSteps view={view} steps={wakeSteps} /> : null}
        {rows
          .filter((row) => !forbids(row))
          .map((row) => (
            <MatterLine key={row.matter.entry} row={row} garage={view.garage} whose={false} />
          ))}
      </ul>
    </section>
  );
}

/** Its findings and incidents as the list of the garage has them, the worst first. */
function mattersOf({ carId, car }: CarView, { findings, incidents }: Matters): OpenMatter[] {
  const whose = { carId, carName: car.name, gearId: null, gearName: null };
  const rows: OpenMatter[] = [
    ...incidents.map((matter): OpenMatter => ({ ...whose, kind: 'incident', matter })),
    ...findings.map((matter): OpenMatter => ({ ...whose, kind: 'finding', matter })),
  ];
  return rows.sort((a, b) => RANKS.indexOf(rankOf(a)) - RANKS.indexOf(rankOf(b)));
}

const WHEELS: Readonly<
  Record<
    Exclude<Matters['wheels']['state'], 'notOnRecord' | 'rechecked'>,
    { mark: MarkKind; words: string }
  >
> = {
  off: { mark: 'overdue', words: 'Wheels not torqued' },
  recheckDue: { mark: 'dueSoon', words: 'Check wheel torque again' },
  torqued: { mark: 'noDate', words: 'Wheels torqued' },
};

function Wheels({ view, wheels }: { view: CarView; wheels: Matters['wheels'] }) {
  if (wheels.state === 'notOnRecord' || wheels.state === 'rechecked') return null;
  const { mark, words } = WHEELS[wheels.state];
  const told = wheelsWords(wheels, view.car.unit);
  return (
    <li className={styles.line}>
      <p className={styles.state}>
        <StateWord kind={mark} words={words} />
      </p>
      {told === null ? null : <p>{told}.</p>}
      <p className={styles.ways}>
        <ButtonLink href={recordHref(view, 'wheels')} look="quiet">
          Record wheels
        </ButtonLink>
        {wheels.entry === null ? null : (
          <ButtonLink href={`/g/${view.garage.id}/entry/${wheels.entry}` as Route} look="quiet">
            Open entry<span className={styles.unseen}>: wheels</span>
          </ButtonLink>
        )}
      </p>
    </li>
  );
}

function WakeSteps({ view, steps }: { view: CarView; steps: Matters['wakeSteps'] }) {
  const laidUp = view.analysis?.status === 'laidUp';
  const keys = [...new Set(steps.flatMap(({ keysAt }) => keysAt ?? []))];
  return (
    <li className={styles.line}>
      <p className={styles.state}>
        <StateWord
          kind={laidUp ? 'laidUp' : 'overdue'}
          words={laidUp ? 'Before it wakes' : 'Not woken up'}
        />
      </p>
      <ul className={styles.steps}>
        {steps.map((step) => (
          <li key={`${step.layUp} ${step.what}`}>{wakeStepWords(step)}.</li>
        ))}
      </ul>
      {keys.length > 0 ? <p>Keys: {keys.join(', ')}.</p> : null}
      <p className={styles.ways}>
        <ButtonLink href={recordHref(view, 'wakeUp')} look="quiet">
          Record the wake-up
        </ButtonLink>
      </p>
    </li>
  );
}

const recordHref = ({ garage, carId }: CarView, kind: string) =>
  `/g/${garage.id}/record/${carId}/${kind}` as Route;
