import type { Route } from 'next';
import { ButtonLink, EmptyState } from '../components/index.ts';

/** A garage without a car offers the next step. */
export function NoCarYet({ garageId }: { garageId: string }) {
  return (
    <EmptyState
      title="Begin with one car"
      actions={
        <ButtonLink href={`/g/${garageId}/car/add` as Route} look="main">
          Add a car
        </ButtonLink>
      }
    >
      <p>
        Its name and the unit of its odometer are enough. Then say what is to be watched, such as
        engine oil or brake fluid, with the limits its manual gives and the day each was last done.
      </p>
      <p>What happens to the car from then on counts towards those limits.</p>
    </EmptyState>
  );
}
