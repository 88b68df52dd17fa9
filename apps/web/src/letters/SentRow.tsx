import type { SentRow as Row } from '@quartermark/api/client';
import { MailLine } from './MailLine.tsx';
import styles from './SentRow.module.css';
import { sentTitle } from './sent-words.ts';

/** One thing that left, or was to. */
export function SentRow({ row, zone }: { row: Row; zone: string }) {
  return (
    <li className={styles.row}>
      <h2>{sentTitle(row)}</h2>
      <MailLine mail={row.mail} zone={zone} />
    </li>
  );
}
