import type { CarView } from '@quartermark/api/client';
import { formatVolume } from '@quartermark/engine/display';
import { Why } from '../components/index.ts';
import { momentWords } from '../garage/moment-words.ts';
import styles from './OilScreen.module.css';

/** How level and rates are worked out, in words, whose method it is, and what would make them better. */
export function OilWhy({ view }: { view: CarView }) {
  const { analysis, computedAt, engineVersion, garage, car } = view;
  if (!analysis) return null;
  const { oil } = analysis;
  const span = formatVolume(oil.spanL, garage.volumeUnit);
  return (
    <Why of="oil level and use" words="Why">
      <div className={styles.why}>
        <p>
          Level = the level before, less what the car used since at its likely rate, plus what was
          poured in. An oil change sets it close to MAX. Each reading then pulls the level towards
          itself, by as much as a stick can be trusted: to about a tenth of the way between the
          marks. One that does not fit counts for little, until the next agrees with it.
        </p>
        <p>
          Rates are learnt from every reading and bottle together: what was missing, by what was
          driven. Road and hard use have a rate each and move together when the engine wears; a
          repair that affects oil use lets them go free. The ledger also weighs whether use jumped
          at some time in the last 12,000 km, and tells it once that is likely enough.
        </p>
        <p>
          Between MIN and MAX: {span}
          {oil.spanAssumed ? ', assumed' : ', your own value'}. Read{' '}
          {car.profile.dipstick ? 'by the procedure on the car’s page' : 'as you always do'}. Rests
          on {oil.levelsRead} {oil.levelsRead === 1 ? 'level' : 'levels'} read by the procedure.
        </p>
        <p>
          Source: our own method, tried on simulated logs, not on real ones. How well a stick can be
          read, and how oil grows with heat, are common practice, no source. Eight times in ten the
          truth lies between the two ends that are shown. It is no measurement: look at the stick,
          and the maker’s manual decides.
        </p>
        <p>
          What would make it better: readings always taken the same way, every bottle recorded with
          its volume, sessions logged with their distance
          {oil.spanAssumed ? ', and the litres between MIN and MAX of your own stick' : ''}.
        </p>
        {computedAt ? (
          <p>
            Worked out {momentWords(computedAt, garage.zone)}, version {engineVersion ?? '?'}.
          </p>
        ) : null}
      </div>
    </Why>
  );
}
