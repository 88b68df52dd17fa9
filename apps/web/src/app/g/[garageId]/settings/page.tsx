import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata, Route } from 'next';
import { notFound } from 'next/navigation';
import { ButtonLink, PageAnswer } from '../../../../components/index.ts';
import { Page } from '../../../../frame/Page.tsx';
import { GarageForm } from '../../../../garage/GarageForm.tsx';
import { AsksList } from '../../../../requirements/AsksList.tsx';
import { answers, ask, pageCache } from '../../../../server/ask.ts';
import { chosenTheme } from '../../../../server/theme.ts';
import { ThisBrowser } from './ThisBrowser.tsx';

export const metadata: Metadata = { title: 'Settings' };

type SettingsProps = { params: Promise<{ garageId: string }> };

export default async function Settings({ params }: SettingsProps) {
  const { garageId } = await params;
  const garages = await pageCache().fetchQuery(ask().garage.mine.queryOptions());
  const garage = garages.find(({ id }) => id === garageId);
  if (!garage) notFound();
  await pageCache().fetchQuery(ask().requirements.list.queryOptions({ garageId }));
  return (
    <HydrationBoundary state={answers()}>
      <Page width="narrow">
        <PageAnswer about="Settings">
          {`${garage.name} keeps the days of ${garage.zone} and speaks in ${
            garage.distanceUnit === 'km' ? 'kilometres' : 'miles'
          }.`}
        </PageAnswer>
        <GarageForm garage={garage} />
        <p>
          <ButtonLink href={`/g/${garageId}/letters/settings` as Route}>
            Letters and calendar
          </ButtonLink>{' '}
          <ButtonLink href={`/g/${garageId}/labels` as Route}>Labels for the cars</ButtonLink>
        </p>
        <AsksList garageId={garageId} />
        <ThisBrowser theme={await chosenTheme()} />
      </Page>
    </HydrationBoundary>
  );
}
