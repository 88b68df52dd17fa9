'use client';

import type { CarView } from '@quartermark/api/client';
import { formatNumber, formatRough, volumeSign } from '@quartermark/engine/display';
import type { LearntSpan } from '@quartermark/engine/oil';
import { LITRES_PER_UNIT } from '@quartermark/engine/units';
import { Notice, Why } from '../components/index.ts';
import { KeepSpan } from './KeepSpan.tsx';
import styles from './LearnStick.module.css';
import { RecordBottle } from './RecordBottle.tsx';
import type { StickRead } from './stick-fields.ts';

type LearntProps = {
  /** null: not everything is filled in */
  learnt: LearntSpan | null;
  around: StickRead['around'];
  over: boolean;
  view: CarView;
  forget: () => void;
};

/** What the readings show, and what can be done with it. */
export function Learnt({ learnt, around, over, view, forget }: LearntProps) {
  const { volumeUnit } = view.garage;
  return (
    <section aria-label="What they show" className={styles.learnt} aria-live="polite">
      {over ? (
        <Notice tone="alarm" title="Over MAX">
          Drain it down to MAX by the manual’s procedure; do not run the engine before.
        </Notice>
      ) : null}
      {learnt && around ? (
        <>
          <h2>{spanWords(learnt, volumeUnit)}</h2>
          <p>{findingWords(learnt)}</p>
          <p>{repeatWords(learnt, around.before.length + around.after.length, volumeUnit)}</p>
          <div className={styles.presses}>
            {learnt.finding === 'tooLittle' ? null : <KeepSpan learnt={learnt} view={view} />}
            <RecordBottle around={around} view={view} forget={forget} />
          </div>
          <p className={styles.soft}>
            Nothing is stored before you say so. The oil you poured in is in the engine, so record
            it whatever you think of the litres.
          </p>
          <Why of="litres between the marks" words="Why">
            <p>
              Litres between the marks = what was poured in, divided by how far the level rose. How
              sure it is follows from how far repeated readings lie apart (a tenth of the way
              between the marks where there are none) and from the bottle’s own marks, good to 3 %.
              Common practice of workshops; the spread is our own reckoning, no published source.
              The maker’s figure, where the manual has one, comes first.
            </p>
          </Why>
        </>
      ) : (
        <p>Fill in the four steps; the litres between the marks then stand here.</p>
      )}
    </section>
  );
}

type VolumeUnit = CarView['garage']['volumeUnit'];

function spanWords({ likelyL, lowL, highL }: LearntSpan, unit: VolumeUnit): string {
  const figure = (litres: number) => formatNumber(litres / LITRES_PER_UNIT[unit], 2);
  const likely = `About ${figure(likelyL)} ${volumeSign(unit)} between MIN and MAX`;
  return highL === null
    ? `${likely}, ${figure(lowL)} or more.`
    : `${likely}, ${figure(lowL)} to ${figure(highL)}.`;
}

function findingWords({ finding }: LearntSpan): string {
  switch (finding) {
    case 'fine':
      return 'Good enough to keep.';
    case 'rough':
      return 'Rough: a larger bottle, or each reading once more, would make it surer.';
    case 'tooLittle':
      return 'The level rose too little to say. Pour in more, as long as it stays below MAX, and read again.';
  }
}

function repeatWords(
  { readingSd, likelyL }: LearntSpan,
  readings: number,
  unit: VolumeUnit,
): string {
  const litres = formatRough(Math.max(readingSd * likelyL, 0.05), unit);
  return readings > 2
    ? `By your own repeats one look at this stick is good to about ${litres}.`
    : `One look at a stick is taken to be good to about ${litres}; read each twice to learn your own.`;
}
