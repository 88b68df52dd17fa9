import type { EventPage } from '@quartermark/api/client';
import { type ReactNode, useId } from 'react';
import { spanWords } from '../event/event-words.ts';
import styles from './EventSheet.module.css';
import { CERTIFIES_NOTHING, stampWords } from './sheet-words.ts';

type SheetPageProps = { page: EventPage; title: string; older: boolean; children: ReactNode };

/** One page; where it is longer than the paper, its head and foot stand on each. */
export function SheetPage({ page, title, older, children }: SheetPageProps) {
  const id = useId();
  const { event } = page.event;
  const where = [event.name, spanWords(event), event.place].filter(Boolean).join(', ');
  return (
    <section aria-labelledby={id} className={styles.page}>
      <header className={styles.head}>
        <h2 id={id}>{title}</h2>
        <p>
          {where}. {page.garage.name}.
        </p>
      </header>
      <div className={styles.body}>{children}</div>
      <footer className={styles.foot}>
        <p>
          <strong>{stampWords(page)}</strong>
          {older ? ' Older than the last entries on this phone.' : ''}
        </p>
        <p>{CERTIFIES_NOTHING}</p>
      </footer>
    </section>
  );
}
