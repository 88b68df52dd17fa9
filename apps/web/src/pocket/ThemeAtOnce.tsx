import { THEME_COOKIE } from '../frame/theme.ts';

/** The kept page was painted in the look of the day it was kept: this puts on today's before it is seen. */
const SCRIPT = `
var look = /(?:^|; )${THEME_COOKIE}=(\\w+)/.exec(document.cookie);
if (look) document.documentElement.dataset.theme = look[1];
`;

export function ThemeAtOnce({ nonce }: { nonce: string | undefined }) {
  return (
    // browsers hide the nonce of a script that has run
    <script
      nonce={nonce}
      suppressHydrationWarning
      // biome-ignore lint/security/noDangerouslySetInnerHtml: the text is a constant of this very file
      dangerouslySetInnerHTML={{ __html: SCRIPT }}
    />
  );
}
