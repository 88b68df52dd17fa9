import { KIND_WORDS } from '@quartermark/engine/display';
import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../../components/index.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { RecordForm } from '../../../../../../record/RecordForm.tsx';
import { KIND_QUESTION, recordKindOf } from '../../../../../../record/record-kinds.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

type RecordPageProps = {
  params: Promise<{ garageId: string; carId: string; kind: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export async function generateMetadata({ params }: RecordPageProps): Promise<Metadata> {
  const kind = recordKindOf((await params).kind);
  return { title: kind ? KIND_WORDS[kind] : 'What happened' };
}

export default async function RecordPage({ params, searchParams }: RecordPageProps) {
  const { garageId, carId, kind: named } = await params;
  const kind = recordKindOf(named);
  if (!kind) notFound();
  const { item } = await searchParams;
  const where = { garageId, carId };
  const [{ car }] = await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().car.view.queryOptions(where)),
      pageCache().fetchQuery(ask().car.lastValues.queryOptions(where)),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={`${car.name}: ${KIND_WORDS[kind].toLowerCase()}`}>
          {KIND_QUESTION[kind]}
        </PageAnswer>
        <RecordForm
          garageId={garageId}
          carId={carId}
          kind={kind}
          itemId={typeof item === 'string' ? item : null}
        />
      </Page>
    </HydrationBoundary>
  );
}
