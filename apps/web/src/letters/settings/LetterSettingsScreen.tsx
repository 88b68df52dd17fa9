'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../../client/trpc.ts';
import { PageAnswer } from '../../components/index.ts';
import { hourWords } from '../letters-words.ts';
import styles from './LetterSettings.module.css';
import { PostForm } from './PostForm.tsx';
import { PrivateCalendar } from './PrivateCalendar.tsx';
import { TestLetter } from './TestLetter.tsx';
import { WishForm } from './WishForm.tsx';
import { wishAnswer } from './wish-fields.ts';

type LetterSettingsScreenProps = {
  garageId: string;
  /** owner and admin keep the garage's post */
  keeps: boolean;
};

/** What comes to a member, and when; below, for owner and admin, how the garage's post leaves. */
export function LetterSettingsScreen({ garageId, keeps }: LetterSettingsScreenProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.letter.wish.queryOptions({ garageId }));
  const { garage, wish, canMail, to, sendMinute } = data;
  return (
    <>
      <PageAnswer
        about="What comes, and when"
        beneath={<Link href={`/g/${garageId}/letters` as Route}>All letters</Link>}
      >
        {wishAnswer({
          wish,
          today: garage.today,
          hour: hourWords(sendMinute),
          to: canMail && wish.mail ? to : null,
        })}
      </PageAnswer>
      <div className={styles.parts}>
        <WishForm garageId={garageId} />
        {garage.demo ? null : <PrivateCalendar garageId={garageId} zone={garage.zone} />}
        {keeps ? (
          <>
            <h2 className={styles.garage}>For the whole garage</h2>
            <PostForm garageId={garageId} />
            <TestLetter
              garageId={garageId}
              reason={canMail ? null : 'Set a mail server first, and save it.'}
              to={to}
              zone={garage.zone}
            />
            <p>
              <Link href={`/g/${garageId}/letters/sent` as Route}>What left the house</Link>
            </p>
          </>
        ) : (
          <p>
            {garage.demo
              ? 'From the demo garage nothing leaves the house: no mail server, no webhook and no private calendar can be set here. In a garage of your own you set them on this page.'
              : `When letters leave (${hourWords(sendMinute)}) and by which mail server is set by the garage’s owner.`}
          </p>
        )}
      </div>
    </>
  );
}
