import type { UrgentCar } from '@quartermark/api/client';
import type { Route } from 'next';
import { headers } from 'next/headers';
import { notFound, redirect } from 'next/navigation';
import type { ReactNode } from 'react';
import { AfterSaveProvider } from '../../../client/AfterSave.tsx';
import { LiveLine } from '../../../client/LiveLine.tsx';
import { DemoLine } from '../../../frame/DemoLine.tsx';
import { GarageNav } from '../../../frame/GarageNav.tsx';
import { Masthead } from '../../../frame/Masthead.tsx';
import { LineEntryDoor } from '../../../pocket/LineEntryDoor.tsx';
import { WaitsElsewhere } from '../../../pocket/WaitsElsewhere.tsx';
import { ask, pageCache } from '../../../server/ask.ts';
import { PATH_HEADER } from '../../../server/path-header.ts';
import { seenHere } from '../../../server/seen.ts';
import { chosenTheme } from '../../../server/theme.ts';
import { UrgentLine } from '../../../urgent/UrgentLine.tsx';

type GarageLayoutProps = { children: ReactNode; params: Promise<{ garageId: string }> };

export default async function GarageLayout({ children, params }: GarageLayoutProps) {
  const { garageId } = await params;
  const { signedIn } = await pageCache().fetchQuery(ask().setup.state.queryOptions());
  if (!signedIn) redirect(`/sign-in?to=${encodeURIComponent(await here())}` as Route);
  const garages = await pageCache().fetchQuery(ask().garage.mine.queryOptions());
  const garage = garages.find(({ id }) => id === garageId);
  if (!garage) notFound();
  return (
    <>
      <Masthead theme={await chosenTheme()}>
        <GarageNav garageId={garageId} unread={await unreadIn(garageId)} />
      </Masthead>
      {garage.demo ? <DemoLine /> : null}
      <UrgentLine garageId={garageId} known={await urgentIn(garageId)} painted={await seenHere()} />
      <WaitsElsewhere />
      <LiveLine garageId={garageId} />
      <AfterSaveProvider garageId={garageId}>
        <LineEntryDoor garageId={garageId}>{children}</LineEntryDoor>
      </AfterSaveProvider>
    </>
  );
}

async function unreadIn(garageId: string): Promise<number | null> {
  const question = ask().letter.unread.queryOptions({ garageId });
  return pageCache()
    .fetchQuery(question)
    .then(({ count }) => count)
    .catch(() => null);
}

/** A page is worth more than its head: what cannot be asked now is asked again by the browser. */
async function urgentIn(garageId: string): Promise<UrgentCar[] | null> {
  const question = ask().garage.urgent.queryOptions({ garageId });
  return pageCache()
    .fetchQuery(question)
    .catch(() => null);
}

async function here(): Promise<string> {
  return (await headers()).get(PATH_HEADER) ?? '/';
}
