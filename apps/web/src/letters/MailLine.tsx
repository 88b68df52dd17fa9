import type { MailState } from '@quartermark/api/client';
import { joinClasses } from '../components/index.ts';
import styles from './MailLine.module.css';
import { MailMark } from './MailMark.tsx';
import { mailWords } from './mail-words.ts';

/** How far something has come on its way by mail, with what the server said. */
export function MailLine({ mail, zone }: { mail: MailState; zone: string }) {
  const { state, more, failed } = mailWords(mail, zone);
  return (
    <div>
      <p className={joinClasses(styles.state, failed && styles.failed)}>
        <MailMark state={mail.state} />
        <span>{state}.</span>
      </p>
      {more.map((sentence) => (
        <p key={sentence} className={styles.more}>
          {sentence}
        </p>
      ))}
    </div>
  );
}
