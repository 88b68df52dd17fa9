import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { PageAnswer } from '../../../../../../../components/index.ts';
import { Page } from '../../../../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../../server/ask.ts';
import { SpecForm } from '../../../../../../../spec/SpecForm.tsx';

export const metadata: Metadata = { title: 'Change the spec sheet' };

type ChangeSpecProps = { params: Promise<{ garageId: string; carId: string }> };

export default async function ChangeSpec({ params }: ChangeSpecProps) {
  const where = await params;
  const [{ car }] = await orNotFound(
    Promise.all([
      pageCache().fetchQuery(ask().car.view.queryOptions(where)),
      pageCache().fetchQuery(ask().spec.view.queryOptions(where)),
    ]),
  );
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <PageAnswer about={`${car.name}: spec sheet`}>
          What do you look up again and again, and who says so?
        </PageAnswer>
        <SpecForm {...where} />
      </Page>
    </HydrationBoundary>
  );
}
