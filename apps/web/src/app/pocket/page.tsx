import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { Masthead } from '../../frame/Masthead.tsx';
import { PocketScreen } from '../../pocket/PocketScreen.tsx';
import { ThemeAtOnce } from '../../pocket/ThemeAtOnce.tsx';
import { chosenTheme } from '../../server/theme.ts';

export const metadata: Metadata = { title: 'In the paddock' };

/**
 * The one page that opens without signal. It asks the server for nothing and is the same for everybody,
 * so that a browser may keep it; what it shows comes from the browser's own store.
 */
export default async function PocketPage() {
  const policy = (await headers()).get('content-security-policy') ?? '';
  return (
    <>
      <ThemeAtOnce nonce={/'nonce-([^']+)'/.exec(policy)?.[1]} />
      <Masthead theme={await chosenTheme()} />
      <PocketScreen />
    </>
  );
}
