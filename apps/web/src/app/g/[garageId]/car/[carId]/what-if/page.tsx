import { HydrationBoundary } from '@tanstack/react-query';
import type { Metadata } from 'next';
import { Page } from '../../../../../../frame/Page.tsx';
import { answers, ask, orNotFound, pageCache } from '../../../../../../server/ask.ts';
import { readLines as linesOfAddress } from '../../../../../../what-if/added-address.ts';
import { lineOf, readLines } from '../../../../../../what-if/added-fields.ts';
import { WhatIfScreen } from '../../../../../../what-if/WhatIfScreen.tsx';

export const metadata: Metadata = { title: 'What if' };

type WhatIfProps = {
  params: Promise<{ garageId: string; carId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function WhatIf({ params, searchParams }: WhatIfProps) {
  const where = await params;
  const { whatIf } = ask().forecast;
  const view = await orNotFound(
    pageCache().fetchQuery(whatIf.queryOptions({ ...where, added: [] })),
  );
  const { added, lost } = linesOfAddress(await searchParams);
  // days that have passed since the address was written are mended in the form
  const fits = readLines(
    { lines: added.map((line) => lineOf(line, view.unit)) },
    view.garage.today,
  );
  const possible = 'added' in fits ? fits.added : [];
  if (possible.length > 0)
    await pageCache().fetchQuery(whatIf.queryOptions({ ...where, added: possible }));
  return (
    <HydrationBoundary state={answers()}>
      <Page>
        <WhatIfScreen view={view} first={added} possible={possible} lost={lost} />
      </Page>
    </HydrationBoundary>
  );
}
