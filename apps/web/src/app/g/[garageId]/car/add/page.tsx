import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AddCarForm } from '../../../../../car-form/AddCarForm.tsx';
import { PageAnswer } from '../../../../../components/index.ts';
import { Page } from '../../../../../frame/Page.tsx';
import { ask, pageCache } from '../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'Add a car' };

type AddCarProps = { params: Promise<{ garageId: string }> };

export default async function AddCar({ params }: AddCarProps) {
  const { garageId } = await params;
  const garages = await pageCache().fetchQuery(ask().garage.mine.queryOptions());
  const garage = garages.find(({ id }) => id === garageId);
  if (!garage) notFound();
  return (
    <Page width="narrow">
      <PageAnswer about="Add a car">A name and the odometer’s unit are enough to begin.</PageAnswer>
      <AddCarForm garage={garage} />
    </Page>
  );
}
