export const THEMES = ['system', 'paper', 'graphite', 'sun'] as const;
export type Theme = (typeof THEMES)[number];

export const THEME_WORDS: Record<Theme, string> = {
  system: 'As the device',
  paper: 'Paper',
  graphite: 'Graphite',
  sun: 'Sun',
};

export const THEME_COOKIE = 'quartermark-look';

export function themeOf(value: string | undefined): Theme {
  return THEMES.find((theme) => theme === value) ?? 'system';
}
