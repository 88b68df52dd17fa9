'use client';

import type { GearRow } from '@quartermark/api/client';
import { gearListAnswer } from '@quartermark/engine/display';
import type { GearKind } from '@quartermark/engine/log';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, PageAnswer } from '../components/index.ts';
import { GearLine } from './GearLine.tsx';
import styles from './GearScreen.module.css';
import { gearFacts, gearUrgency } from './gear-facts.ts';
import { GROUP_NAME } from './gear-words.ts';

const GROUPS: readonly { kind: GearKind; empty: string }[] = [
  {
    kind: 'component',
    empty:
      'A tyre set, pads or another part that moves between cars keeps its own sessions, distance and measurements.',
  },
  {
    kind: 'equipment',
    empty:
      'A torque wrench, a lift, an extinguisher: what is looked at or renewed by the calendar.',
  },
  {
    kind: 'person',
    empty: 'Somebody who drives or helps: helmet, harness and licence have dates of their own.',
  },
];

/** What moves between cars or belongs to none: what of it needs a hand, then all of it by urgency. */
export function GearScreen({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.gear.list.queryOptions({ garageId }));
  const { garage } = data;
  const rows = data.rows.toSorted((a, b) => gearUrgency(a) - gearUrgency(b));
  const facts = rows.map((row) => gearFacts(row, garage.distanceUnit));
  return (
    <>
      <PageAnswer
        about="Sets, tools and people"
        action={
          <ButtonLink href={`/g/${garageId}/gear/add` as Route} look="main">
            Add one
          </ButtonLink>
        }
      >
        {gearListAnswer(facts.filter((one) => one !== null))}
      </PageAnswer>
      <div className={styles.groups}>
        {GROUPS.map(({ kind, empty }) => (
          <Group
            key={kind}
            kind={kind}
            empty={empty}
            rows={rows.filter(({ gear }) => gear.kind === kind)}
            garageId={garageId}
            unit={garage.distanceUnit}
          />
        ))}
      </div>
    </>
  );
}

type GroupProps = {
  kind: GearKind;
  empty: string;
  rows: readonly GearRow[];
  garageId: string;
  unit: 'km' | 'mi';
};

function Group({ kind, empty, rows, garageId, unit }: GroupProps) {
  return (
    <section aria-labelledby={`group-${kind}`} className={styles.group}>
      <div className={styles.head}>
        <h2 id={`group-${kind}`}>{GROUP_NAME[kind]}</h2>
        <ButtonLink href={`/g/${garageId}/gear/add?kind=${kind}` as Route} look="quiet">
          Add<span className={styles.unseen}>: {GROUP_NAME[kind].toLowerCase()}</span>
        </ButtonLink>
      </div>
      {rows.length === 0 ? <p className={styles.empty}>None yet. {empty}</p> : null}
      <ul className={styles.list}>
        {rows.map((row) => (
          <GearLine key={row.gearId} row={row} garageId={garageId} unit={unit} />
        ))}
      </ul>
    </section>
  );
}
