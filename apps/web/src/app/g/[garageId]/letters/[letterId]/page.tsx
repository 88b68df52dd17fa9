import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../frame/Page.tsx';
import { LetterScreen } from '../../../../../letters/LetterScreen.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

type LetterProps = { params: Promise<{ garageId: string; letterId: string }> };

async function found({ params }: LetterProps) {
  return orNotFound(pageCache().fetchQuery(ask().letter.view.queryOptions(await params)));
}

export async function generateMetadata(props: LetterProps): Promise<Metadata> {
  return { title: (await found(props)).letter.subject };
}

export default async function Letter(props: LetterProps) {
  await found(props);
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <LetterScreen {...(await props.params)} />
      </Page>
    </HydrationBoundary>
  );
}
