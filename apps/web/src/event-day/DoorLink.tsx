import type { EventPage } from '@quartermark/api/client';
import type { RecordAt } from '@quartermark/engine/readiness';
import type { Route } from 'next';
import { ButtonLink } from '../components/index.ts';
import styles from './DoorLink.module.css';
import { debriefOf, doorOf } from './door-of.ts';

type DoorLinkProps = {
  record: RecordAt;
  /** ids of the needs it answers */
  needs: readonly string[];
  /** what is recorded there, for those who hear the page */
  of: string;
  carId: string;
  page: EventPage;
};

/** Leads to where what was done is written down. */
export function DoorLink({ record, needs, of, carId, page }: DoorLinkProps) {
  const { garage, event, names } = page;
  const where = { garageId: garage.id, eventId: event.eventId, carId, names };
  const { href, words } = debriefOf(needs, where) ?? doorOf(record, where);
  return (
    <ButtonLink href={href as Route} look="quiet">
      {words}
      <span className={styles.unseen}>: {of}</span>
    </ButtonLink>
  );
}
