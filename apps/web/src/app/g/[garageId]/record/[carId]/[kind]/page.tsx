import { KIND_WORDS } from '@quartermark/engine/display';
import type { EntryKind } from '@quartermark/engine/log';
import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../../components/index.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { RecordForm } from '../../../../../../record/RecordForm.tsx';
import { entryKindOf, KIND_QUESTION } from '../../../../../../record/record-kinds.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';
import { every, one, type SaidInAddress } from '../../../../../../server/said-in-address.ts';

type RecordPageProps = {
  params: Promise<{ garageId: string; carId: string; kind: string }>;
  searchParams: Promise<Record<string, SaidInAddress>>;
};

export async function generateMetadata({ params }: RecordPageProps): Promise<Metadata> {
  const kind = entryKindOf((await params).kind);
  return { title: kind ? KIND_WORDS[kind] : 'What happened' };
}

/** Kinds whose form names a part; the rest do without the list, which is worked out when asked. */
const NAMES_PARTS: readonly EntryKind[] = ['fit', 'measure', 'session'];

export default async function RecordPage({ params, searchParams }: RecordPageProps) {
  const { garageId, carId, kind: named } = await params;
  const kind = entryKindOf(named);
  if (!kind) notFound();
  const { item, component, notice } = await searchParams;
  const where = { garageId, carId };
  const [{ car }] = await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().car.view.queryOptions(where)),
      pageCache().fetchQuery(ask().car.lastValues.queryOptions(where)),
      ...(NAMES_PARTS.includes(kind)
        ? [pageCache().fetchQuery(ask().gear.list.queryOptions({ garageId }))]
        : []),
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
          of={{ items: every(item), component: one(component), notice: one(notice) }}
        />
      </Page>
    </HydrationBoundary>
  );
}
