import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { PageAnswer } from '../components/index.ts';
import { Masthead } from '../frame/Masthead.tsx';
import { Page } from '../frame/Page.tsx';
import { GarageList } from '../garage/GarageList.tsx';
import { ask, pageCache } from '../server/ask.ts';
import { chosenTheme } from '../server/theme.ts';

/** Leads to where this person's work is; with several garages it asks which. */
export default async function Home() {
  const { signedIn, ownerExists } = await pageCache().fetchQuery(ask().setup.state.queryOptions());
  if (!signedIn) redirect(ownerExists ? '/sign-in' : '/start');
  const garages = await pageCache().fetchQuery(ask().garage.mine.queryOptions());
  const only = garages.length === 1 ? garages[0] : undefined;
  if (only) redirect(`/g/${only.id}` as Route);
  return (
    <>
      <Masthead theme={await chosenTheme()} />
      <Page width="narrow">
        <PageAnswer about="Quartermark">
          {garages.length === 0
            ? 'You belong to no garage. Its owner can let you in again.'
            : 'Which garage?'}
        </PageAnswer>
        <GarageList garages={garages} />
      </Page>
    </>
  );
}
