'use client';

import { Choice } from '../components/index.ts';
import { THEME_WORDS, THEMES, type Theme } from './theme.ts';
import { useTheme } from './use-theme.ts';

/** The look, as a setting with its explanation. */
export function ThemeChoice({ painted }: { painted: Theme }) {
  const [theme, choose] = useTheme(painted);
  return (
    <Choice
      label="Look"
      hint="Kept in this browser. Sun is black on white and heavy, for bright daylight."
      size="small"
      value={theme}
      onChange={choose}
      options={THEMES.map((value) => ({ value, words: THEME_WORDS[value] }))}
    />
  );
}
