import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { PageAnswer } from '../../../../../../components/index.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { DoneForm } from '../../../../../../gear/DoneForm.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Record service done' };

type DoneProps = {
  params: Promise<{ garageId: string; gearId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function Done({ params, searchParams }: DoneProps) {
  const where = await params;
  const { item } = await searchParams;
  const { row } = await orNotFound(pageCache().fetchQuery(ask().gear.view.queryOptions(where)));
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={row.gear.name}>What was done?</PageAnswer>
        <DoneForm {...where} itemId={typeof item === 'string' ? item : null} />
      </Page>
    </HydrationBoundary>
  );
}
