import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { PageAnswer } from '../../components/index.ts';
import { Masthead } from '../../frame/Masthead.tsx';
import { Page } from '../../frame/Page.tsx';
import { ask, pageCache } from '../../server/ask.ts';
import { chosenTheme } from '../../server/theme.ts';
import { FirstStart } from './FirstStart.tsx';

export const metadata: Metadata = { title: 'First start' };

type StartProps = { searchParams: Promise<{ token?: string | string[] }> };

export default async function Start({ searchParams }: StartProps) {
  const state = await pageCache().fetchQuery(ask().setup.state.queryOptions());
  if (state.ownerExists) redirect('/');
  const { token } = await searchParams;
  return (
    <>
      <Masthead theme={await chosenTheme()} />
      <Page width="narrow">
        <PageAnswer about="First start">
          Nobody owns this garage yet. Make the owner’s account, or look around in a demo garage
          first.
        </PageAnswer>
        <FirstStart
          token={typeof token === 'string' ? token : ''}
          demoOpen={state.demoOpen}
          inDemo={state.signedInDemo}
        />
      </Page>
    </>
  );
}
