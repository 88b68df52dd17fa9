'use client';

import type { TonightView } from '@quartermark/api/client';
import { useSuspenseQuery } from '@tanstack/react-query';
import { useTRPC } from '../client/trpc.ts';
import { momentWords } from '../garage/moment-words.ts';
import { LetterLines } from './LetterLines.tsx';
import { noLetterWords } from './letters-words.ts';
import styles from './TonightLetter.module.css';

/** What the next letter would say if it were written now, in its own words; it is written in the night. */
export function TonightLetter({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.letter.tonight.queryOptions({ garageId }));
  const { letter } = data;
  const title = data.composed ? 'The next letter so far' : 'Tonight’s letter so far';
  return (
    <section aria-label={title} className={styles.tonight}>
      <h2>{title}</h2>
      {letter === null ? (
        <NoLetter garageId={garageId} tonight={data} />
      ) : (
        <>
          <p className={styles.subject}>{letter.subject}</p>
          <LetterLines letter={letter} garageId={garageId} />
          <p className={styles.soft}>{leavesWords(data)}</p>
        </>
      )}
    </section>
  );
}

function leavesWords({ composed, sendsAt, garage }: TonightView): string {
  if (sendsAt === null)
    return 'It is written within minutes and leaves at once, since the letter’s hour has passed.';
  const when = `It leaves on ${momentWords(sendsAt, garage.zone)}.`;
  return composed
    ? `Today’s letter is written; this is what it has not told. ${when}`
    : `It is written in the night, with what is known then. ${when}`;
}

function NoLetter({ garageId, tonight }: { garageId: string; tonight: TonightView }) {
  const trpc = useTRPC();
  const { data: wished } = useSuspenseQuery(trpc.letter.wish.queryOptions({ garageId }));
  const { why, date } = tonight;
  return <p>{noLetterWords({ why: why ?? 'silent', wish: wished.wish, date })}</p>;
}
