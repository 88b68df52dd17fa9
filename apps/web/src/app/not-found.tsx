import { ButtonLink, PageAnswer } from '../components/index.ts';
import { Masthead } from '../frame/Masthead.tsx';
import { Page } from '../frame/Page.tsx';
import { chosenTheme } from '../server/theme.ts';

export default async function NotFound() {
  return (
    <>
      <Masthead theme={await chosenTheme()} />
      <Page width="narrow">
        <PageAnswer about="Not here">
          There is nothing at this address, or it is not yours to see.
        </PageAnswer>
        <ButtonLink href="/">To the garage</ButtonLink>
      </Page>
    </>
  );
}
