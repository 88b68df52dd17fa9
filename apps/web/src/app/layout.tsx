import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import { Providers } from '../client/Providers.tsx';
import { PocketLine } from '../pocket/PocketLine.tsx';
import { ServiceWorker } from '../pocket/ServiceWorker.tsx';
import { chosenTheme } from '../server/theme.ts';
import '../styles/fonts.css';
import '../styles/tokens.css';
import '../styles/base.css';

export const metadata: Metadata = {
  title: { default: 'Quartermark', template: '%s · Quartermark' },
  description: 'A service and oil ledger for a few hard-used cars.',
  robots: { index: false, follow: false },
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#f7f4ec' },
    { media: '(prefers-color-scheme: dark)', color: '#1e2123' },
  ],
};

export default async function RootLayout({ children }: { children: ReactNode }) {
  const theme = await chosenTheme();
  return (
    <html lang="en" data-theme={theme} suppressHydrationWarning>
      <body>
        <Providers>
          {children}
          <PocketLine />
          <ServiceWorker />
        </Providers>
      </body>
    </html>
  );
}
