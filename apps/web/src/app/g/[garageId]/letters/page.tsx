import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../frame/Page.tsx';
import { LettersScreen } from '../../../../letters/LettersScreen.tsx';
import { letterPages } from '../../../../letters/letter-pages.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../server/ask.ts';
import { ifAllowed } from '../../../../server/if-allowed.ts';

export const metadata: Metadata = { title: 'Letters' };

type LettersProps = { params: Promise<{ garageId: string }> };

export default async function Letters({ params }: LettersProps) {
  const { garageId } = await params;
  const letter = ask().letter;
  const [post] = await orNotFound(
    Promise.all([
      ifAllowed(pageCache().fetchQuery(ask().post.view.queryOptions({ garageId }))),
      pageCache().fetchInfiniteQuery(letter.list.infiniteQueryOptions({ garageId }, letterPages)),
      pageCache().fetchQuery(letter.unread.queryOptions({ garageId })),
      pageCache().fetchQuery(letter.tonight.queryOptions({ garageId })),
      pageCache().fetchQuery(letter.wish.queryOptions({ garageId })),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <LettersScreen garageId={garageId} keeps={post !== null} />
      </Page>
    </HydrationBoundary>
  );
}
