'use client';

import type { Route } from 'next';
import { useSyncExternalStore } from 'react';
import { ButtonLink, Notice, PageAnswer, Skeleton } from '../components/index.ts';
import { OFFLINE_WORDS, offlineAbility } from './offline-ability.ts';
import styles from './Pocket.module.css';
import { clockWords } from './sheet/garage-clock.ts';
import type { SheetState } from './sheet/use-sheet.ts';

type PocketWordsProps = {
  sheet: SheetState;
  /** the page that had no signal */
  wanted: string | null;
  /** there is no car to show */
  empty: boolean;
};

const never = () => () => {};

/** What the person should know before recording; nothing where all is as it should be. */
export function PocketWords({ sheet, wanted, empty }: PocketWordsProps) {
  const ability = useSyncExternalStore(never, offlineAbility, () => 'works' as const);
  const clock = sheet.kept ? clockWords(sheet.kept.aheadMs) : null;
  return (
    <>
      {wanted === null ? null : (
        <Notice
          title="No signal: that page needs the server."
          actions={
            <a href={wanted} className={styles.again}>
              Try that page again
            </a>
          }
        >
          Recording works here; what you save is sent later.
        </Notice>
      )}
      {ability === 'works' ? null : <p className={styles.small}>{OFFLINE_WORDS[ability]}</p>}
      {clock === null ? null : <p className={styles.small}>{clock}</p>}
      {sheet.line === 'signedOut' ? (
        <Notice
          title="You are signed out."
          actions={
            <ButtonLink look="main" href={'/sign-in?to=%2Fpocket' as Route}>
              Sign in
            </ButtonLink>
          }
        >
          What waits on this phone is kept and sent once you are signed in.
        </Notice>
      ) : empty ? (
        <NothingYet sheet={sheet} />
      ) : null}
    </>
  );
}

function NothingYet({ sheet }: { sheet: SheetState }) {
  if (!sheet.looked) return <Skeleton of="your cars" rows={4} />;
  if (sheet.line === 'noAnswer')
    return (
      <PageAnswer about="In the paddock">
        This phone knows no car yet. Open this page once with signal.
      </PageAnswer>
    );
  if (sheet.line === null) return <Skeleton of="your cars" rows={4} />;
  return (
    <PageAnswer about="In the paddock">There is no car yet. Add one in the garage.</PageAnswer>
  );
}
