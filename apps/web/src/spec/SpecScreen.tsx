'use client';

import { SPEC_GROUPS, type SpecGroup, type SpecLine } from '@quartermark/engine/log';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import type { ReactNode } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { ButtonLink, EmptyState, PageAnswer } from '../components/index.ts';
import { PrintPress } from '../labels/PrintPress.tsx';
import { Cautions } from '../record/Cautions.tsx';
import styles from './SpecScreen.module.css';
import { groupCautions } from './spec-cautions.ts';
import { GROUP_NAME, profileLines, specAnswer, UNVERIFIED } from './spec-words.ts';

export type SpecWhere = { garageId: string; carId: string };

/** A car's spec sheet, to be read beside the car: what, its value, and whose value it is. */
export function SpecScreen(where: SpecWhere) {
  const trpc = useTRPC();
  const { data: view } = useSuspenseQuery(trpc.car.view.queryOptions(where));
  const { data } = useSuspenseQuery(trpc.spec.view.queryOptions(where));
  const { lines } = data.sheet;
  const own = `/g/${where.garageId}/car/${where.carId}`;
  return (
    <>
      <PageAnswer
        about={`${view.car.name}: spec sheet`}
        beneath="Values are yours or your manual’s; the maker’s manual decides."
        action={
          <ButtonLink href={`${own}/spec/change` as Route} look="main">
            {lines.length === 0 ? 'Write the sheet' : 'Change the sheet'}
          </ButtonLink>
        }
      >
        {specAnswer(data.sheet)}
      </PageAnswer>
      {lines.length === 0 ? (
        <EmptyState title="Write down what you look up again and again">
          <p>
            How much oil, which torque in which order, which pressure cold, where the jack goes.
            Give the page of the manual beside each value; without one it stands as unverified.
          </p>
        </EmptyState>
      ) : null}
      <OfTheCar lines={profileLines(view.car)} changeHref={`${own}/change` as Route} />
      {SPEC_GROUPS.map((group) => (
        <Group key={group} group={group} lines={lines.filter((line) => line.group === group)}>
          <Cautions of={groupCautions(group, view.car.profile)} />
        </Group>
      ))}
      <div className={styles.ways}>
        <ButtonLink href={own as Route}>To the car</ButtonLink>
        <PrintPress look="plain" />
      </div>
    </>
  );
}

type GroupProps = { group: SpecGroup; lines: readonly SpecLine[]; children: ReactNode };

function Group({ group, lines, children }: GroupProps) {
  if (lines.length === 0) return null;
  return (
    <section aria-label={GROUP_NAME[group]} className={styles.group}>
      <h2>{GROUP_NAME[group]}</h2>
      <dl className={styles.list}>
        {lines.map(({ what, value, source }, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no id, and the sheet is written as a whole
          <div key={at} className={styles.line}>
            <dt>{what}</dt>
            <dd className={styles.value}>{value}</dd>
            <dd className={styles.source}>{source ?? UNVERIFIED}</dd>
          </div>
        ))}
      </dl>
      {children}
    </section>
  );
}

type OfTheCarProps = { lines: readonly { label: string; words: string }[]; changeHref: Route };

/** What is known of the car anyway; it is changed where it stands. */
function OfTheCar({ lines, changeHref }: OfTheCarProps) {
  return (
    <section aria-label="From the car’s own page" className={styles.group}>
      <div className={styles.head}>
        <h2>From the car’s own page</h2>
        <ButtonLink href={changeHref} look="quiet">
          Change the car
        </ButtonLink>
      </div>
      {lines.length === 0 ? (
        <p>Oil, wheels and lifting points are not said there yet.</p>
      ) : (
        <dl className={styles.list}>
          {lines.map(({ label, words }) => (
            <div key={label} className={styles.line}>
              <dt>{label}</dt>
              <dd className={styles.value}>{words}</dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}
