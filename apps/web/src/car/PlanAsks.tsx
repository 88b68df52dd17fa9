import type { CarView } from '@quartermark/api/client';
import type { Route } from 'next';
import { ButtonLink, Notice } from '../components/index.ts';
import { planQuestion } from '../lay-up/plan-words.ts';

/** Asks about planned lay-ups whose first day has come and of which nothing is on record. */
export function PlanAsks({ view }: { view: CarView }) {
  const { garage, carId, layUps, plannedLayUps } = view;
  return plannedLayUps.map(({ layUpId, layUp }) => {
    const asked = planQuestion(layUp, layUps, garage.today);
    if (!asked) return null;
    return (
      <Notice
        key={layUpId}
        title={asked.question}
        actions={
          <>
            <ButtonLink href={`/g/${garage.id}/record/${carId}/layUp` as Route}>
              Record the lay-up
            </ButtonLink>
            <ButtonLink href={`/g/${garage.id}/lay-up/${layUpId}` as Route}>
              Change the plan
            </ButtonLink>
          </>
        }
      >
        {asked.meanwhile}
      </Notice>
    );
  });
}
