import { KIND_WORDS } from '@quartermark/engine/display';
import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata, Route } from 'next';
import { redirect } from 'next/navigation';
import { PageAnswer } from '../../../../../../components/index.ts';
import { aboutName } from '../../../../../../entry/about-name.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { AmendForm } from '../../../../../../record/AmendForm.tsx';
import { aboutWhat } from '../../../../../../record/about-what.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Amend an entry' };

type AmendPageProps = { params: Promise<{ garageId: string; entryId: string }> };

export default async function AmendPage({ params }: AmendPageProps) {
  const { garageId, entryId } = await params;
  const { entry, removed } = await orNotFound(
    pageCache().fetchQuery(ask().entry.one.queryOptions({ garageId, entryId })),
  );
  // a removed entry stays so; its own page says what can be done
  if (removed) redirect(`/g/${garageId}/entry/${entryId}` as Route);
  const what = aboutWhat(entry);
  const name = await orNotFound(aboutName(garageId, what));
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={`${name}: ${KIND_WORDS[entry.kind].toLowerCase()}`}>
          Put the entry right. What it said before is kept.
        </PageAnswer>
        <AmendForm garageId={garageId} entryId={entryId} of={what} />
      </Page>
    </HydrationBoundary>
  );
}
