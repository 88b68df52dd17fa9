import type { EventPage } from '@quartermark/api/client';
import type { RecordAt } from '@quartermark/engine/readiness';
import type { Route } from 'next';
import { ButtonLink } from '../components/index.ts';
import styles from './DoorLink.module.css';
import { doorOf } from './door-of.ts';

type DoorLinkProps = {
  record: RecordAt;
  /** what is recorded there, for those who hear the page */
  of: string;
  carId: string;
  page: EventPage;
};

/** Leads to where what was done is written down. */
export function DoorLink({ record, of, carId, page: { garage, event, names } }: DoorLinkProps) {
  const { href, words } = doorOf(record, {
    garageId: garage.id,
    eventId: event.eventId,
    carId,
    names,
  });
  return (
    <ButtonLink href={href as Route} look="quiet">
      {words}
      <span className={styles.unseen}>: {of}</span>
    </ButtonLink>
  );
}
