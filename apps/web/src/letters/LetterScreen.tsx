'use client';

import { CAUTION } from '@quartermark/digest';
import { weekdayAhead } from '@quartermark/engine/display';
import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import { PageAnswer } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { LetterLines } from './LetterLines.tsx';
import styles from './LetterScreen.module.css';
import { missedWords } from './letters-words.ts';
import { MailLine } from './MailLine.tsx';
import { ReadState } from './ReadState.tsx';

type LetterScreenProps = { garageId: string; letterId: string };

/** One letter as it was sent: its lines with their forms, how it went by mail, and its text. */
export function LetterScreen({ garageId, letterId }: LetterScreenProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.letter.view.queryOptions({ garageId, letterId }));
  const { garage, date, letter, text, mail, missed } = data;
  const nights = missedWords(missed);
  return (
    <>
      <PageAnswer
        about={`Letter of ${weekdayAhead(date, { asOf: null })}`}
        beneath={nights ?? undefined}
      >
        {letter.subject}
      </PageAnswer>
      <LetterLines letter={letter} garageId={garageId} />
      <p className={styles.caution}>{CAUTION}</p>
      <section aria-label="By mail" className={styles.section}>
        <h2>By mail</h2>
        <MailLine mail={mail} zone={garage.zone} />
        <ReadState garageId={garageId} letterId={letterId} read={data.read} />
        <Fold title="The letter as text">
          {/* a long line can be reached by keys */}
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls */}
          <pre tabIndex={0} className={styles.text}>
            {text}
          </pre>
        </Fold>
      </section>
      <p>
        <Link href={`/g/${garageId}/letters` as Route}>All letters</Link>
      </p>
    </>
  );
}
