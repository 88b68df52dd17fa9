import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { PageAnswer } from '../../components/index.ts';
import { Masthead } from '../../frame/Masthead.tsx';
import { Page } from '../../frame/Page.tsx';
import { ask, pageCache } from '../../server/ask.ts';
import { chosenTheme } from '../../server/theme.ts';
import { ownPath } from './own-path.ts';
import { SignInForm } from './SignInForm.tsx';

export const metadata: Metadata = { title: 'Sign in' };

type SignInProps = { searchParams: Promise<{ to?: string | string[] }> };

export default async function SignIn({ searchParams }: SignInProps) {
  const to = ownPath((await searchParams).to);
  const state = await pageCache().fetchQuery(ask().setup.state.queryOptions());
  if (!state.ownerExists) redirect('/start');
  if (state.signedIn) redirect(to);
  return (
    <>
      <Masthead theme={await chosenTheme()} />
      <Page width="narrow">
        <PageAnswer about="Sign in">Sign in to see which cars need a hand today.</PageAnswer>
        <SignInForm to={to} />
      </Page>
    </>
  );
}
