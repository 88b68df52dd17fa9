import { KIND_WORDS } from '@quartermark/engine/display';
import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { aboutName } from '../../../../../entry/about-name.ts';
import { EntryScreen } from '../../../../../entry/EntryScreen.tsx';
import { Page } from '../../../../../frame/Page.tsx';
import { aboutWhat } from '../../../../../record/about-what.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

type EntryPageProps = { params: Promise<{ garageId: string; entryId: string }> };

async function found({ params }: EntryPageProps) {
  const where = await params;
  return await orNotFound(pageCache().fetchQuery(ask().entry.one.queryOptions(where)));
}

export async function generateMetadata(props: EntryPageProps): Promise<Metadata> {
  return { title: KIND_WORDS[(await found(props)).entry.kind] };
}

export default async function EntryPage(props: EntryPageProps) {
  const { garageId, entryId } = await props.params;
  // the car is named by the entry; its revisions need not wait for that
  const revisions = pageCache().fetchQuery(
    ask().entry.revisions.queryOptions({ garageId, entryId }),
  );
  const [{ entry }] = await orNotFound(Promise.all([found(props), revisions]));
  await orNotFound(aboutName(garageId, aboutWhat(entry)));
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <EntryScreen garageId={garageId} entryId={entryId} />
      </Page>
    </HydrationBoundary>
  );
}
