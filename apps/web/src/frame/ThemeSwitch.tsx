'use client';

import styles from './ThemeSwitch.module.css';
import { THEME_WORDS, THEMES, type Theme, themeOf } from './theme.ts';
import { useTheme } from './use-theme.ts';

/** The look, in the head of every page: sun for the paddock must be one press away. */
export function ThemeSwitch({ painted }: { painted: Theme }) {
  const [theme, choose] = useTheme(painted);
  return (
    <label className={styles.switch}>
      <span className={styles.label}>Look</span>
      <select
        className={styles.select}
        value={theme}
        onChange={(event) => choose(themeOf(event.currentTarget.value))}
      >
        {THEMES.map((name) => (
          <option key={name} value={name}>
            {THEME_WORDS[name]}
          </option>
        ))}
      </select>
    </label>
  );
}
