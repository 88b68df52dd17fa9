import type { LetterRow as Row } from '@quartermark/api/client';
import { weekdayAhead } from '@quartermark/engine/display';
import type { Route } from 'next';
import Link from 'next/link';
import styles from './LetterRow.module.css';
import { linesWords } from './letters-words.ts';
import { MailMark } from './MailMark.tsx';
import { mailWords } from './mail-words.ts';
import { ReadMark } from './ReadMark.tsx';

type LetterRowProps = { row: Row; garageId: string; zone: string };

/** One letter: its day, what it says first, whether it was read, and how it went by mail. */
export function LetterRow({ row, garageId, zone }: LetterRowProps) {
  const { letterId, date, subject, lines, read, mail } = row;
  const { state, failed } = mailWords(mail, zone);
  return (
    <li className={styles.row} data-read={read}>
      <p className={styles.day}>{weekdayAhead(date, { asOf: null })}</p>
      <div className={styles.what}>
        <h3>
          <Link
            href={`/g/${garageId}/letters/${letterId}` as Route}
            prefetch={false}
            className={styles.subject}
          >
            {subject}
          </Link>
        </h3>
        <p className={styles.soft}>
          <MailMark state={mail.state} />
          <span>
            {failed ? <strong>{state}</strong> : state}. {linesWords(lines)}.
          </span>
        </p>
      </div>
      <p className={styles.read}>
        <ReadMark read={read} />
      </p>
    </li>
  );
}
