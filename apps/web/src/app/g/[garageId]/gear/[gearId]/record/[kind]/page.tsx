import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../../../components/index.ts';
import { Page } from '../../../../../../../frame/Page.tsx';
import { GearRecordForm } from '../../../../../../../gear/GearRecordForm.tsx';
import { gearKinds } from '../../../../../../../gear/gear-kinds.ts';
import { KIND_QUESTION } from '../../../../../../../record/record-kinds.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'What happened' };

type RecordProps = { params: Promise<{ garageId: string; gearId: string; kind: string }> };

export default async function RecordOfPiece({ params }: RecordProps) {
  const { kind: named, ...where } = await params;
  const { row } = await orNotFound(pageCache().fetchQuery(ask().gear.view.queryOptions(where)));
  const kind = gearKinds(row.gear.kind).find((one) => one === named);
  if (kind === undefined) notFound();
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about={row.gear.name}>{KIND_QUESTION[kind]}</PageAnswer>
        <GearRecordForm {...where} kind={kind} />
      </Page>
    </HydrationBoundary>
  );
}
