import { cookies } from 'next/headers';
import { THEME_COOKIE, type Theme, themeOf } from '../frame/theme.ts';

/** The look this browser chose, read before the first paint so that nothing flashes. */
export async function chosenTheme(): Promise<Theme> {
  return themeOf((await cookies()).get(THEME_COOKIE)?.value);
}
