import type { GarageView } from '@quartermark/api/client';
import { formatDay, typedWords, tyreAgeSentence } from '@quartermark/engine/display';
import type { ComponentLife } from '@quartermark/engine/gear';
import type { GearOf } from '@quartermark/engine/log';
import type { ReactNode } from 'react';
import { ROAD_LAW_NAME } from './gear-words.ts';
import styles from './Life.module.css';
import { lifeLines } from './life-lines.ts';

type LifeProps = { gear: GearOf<'component'>; life: ComponentLife; garage: GarageView };

/** What a part has behind it: use on all its cars, its age, and how thin it may get. */
export function Life({ gear, life, garage }: LifeProps) {
  return (
    <section aria-labelledby="life">
      <h2 id="life">What it has behind it</h2>
      <dl className={styles.list}>
        {lifeLines(life, garage.distanceUnit).map(({ label, words }) => (
          <Line key={label} label={label}>
            {words}
          </Line>
        ))}
        <Line label="It came">
          {gear.condition}
          {gear.since ? `, ${formatDay(gear.since)}` : ''}
        </Line>
        {gear.sort === 'tyreSet' ? (
          <Line label="Age">
            {tyreAgeSentence(life, garage.today) ??
              'Not on record: read the four digits of the date code on the wall.'}
          </Line>
        ) : null}
        {gear.newDepth ? <Line label="Measured new">{typedWords(gear.newDepth)}</Line> : null}
        {gear.leastDepth ? <Line label="Your own least">{typedWords(gear.leastDepth)}</Line> : null}
        {gear.sort === 'tyreSet' ? (
          <Line label="Legal floor">
            {gear.roadLaw ? ROAD_LAW_NAME[gear.roadLaw] : '1.6 mm in the EU, 2/32 in in the US'}
          </Line>
        ) : null}
      </dl>
    </section>
  );
}

function Line({ label, children }: { label: string; children: ReactNode }) {
  return (
    <>
      <dt>{label}</dt>
      <dd>{children}</dd>
    </>
  );
}
