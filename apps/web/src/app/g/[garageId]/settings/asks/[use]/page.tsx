import { READY_FOR } from '@quartermark/engine/log';
import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { PageAnswer } from '../../../../../../components/index.ts';
import { Page } from '../../../../../../frame/Page.tsx';
import { AsksForm } from '../../../../../../requirements/AsksForm.tsx';
import { whoseWords } from '../../../../../../requirements/whose-words.ts';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';

type AsksProps = { params: Promise<{ garageId: string; use: string }> };

export const metadata: Metadata = { title: 'What an event asks' };

export default async function Asks({ params }: AsksProps) {
  const { garageId, use: named } = await params;
  const use = READY_FOR.find((one) => one === named);
  if (use === undefined) notFound();
  const { rows } = await orNotFound(
    pageCache().fetchQuery(ask().requirements.list.queryOptions({ garageId })),
  );
  const standing = rows.find((row) => row.use === use);
  if (!standing) notFound();
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer
          about="What is asked"
          beneath="Blocking: a car that does not meet it is not ready. Advice is shown beside, and keeps nobody at home."
        >
          {`What is asked is ${whoseWords(null, standing)}.`}
        </PageAnswer>
        <AsksForm garageId={garageId} use={use} />
      </Page>
    </HydrationBoundary>
  );
}
