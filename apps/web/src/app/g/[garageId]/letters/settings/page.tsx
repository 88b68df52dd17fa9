import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../frame/Page.tsx';
import { LetterSettingsScreen } from '../../../../../letters/settings/LetterSettingsScreen.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';
import { ifAllowed } from '../../../../../server/if-allowed.ts';

export const metadata: Metadata = { title: 'What comes, and when' };

type LetterSettingsProps = { params: Promise<{ garageId: string }> };

export default async function LetterSettings({ params }: LetterSettingsProps) {
  const { garageId } = await params;
  const [post] = await orNotFound(
    Promise.all([
      ifAllowed(pageCache().fetchQuery(ask().post.view.queryOptions({ garageId }))),
      pageCache().fetchQuery(ask().letter.wish.queryOptions({ garageId })),
      pageCache().fetchQuery(ask().feed.view.queryOptions({ garageId })),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <LetterSettingsScreen garageId={garageId} keeps={post !== null} />
      </Page>
    </HydrationBoundary>
  );
}
