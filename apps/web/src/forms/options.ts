import type { Option } from '../components/index.ts';

export const DISTANCE_OPTIONS = [
  { value: 'km', words: 'Kilometres (km)' },
  { value: 'mi', words: 'Miles (mi)' },
] as const satisfies readonly Option[];

export const VOLUME_OPTIONS = [
  { value: 'l', words: 'Litres (L)' },
  { value: 'usQt', words: 'US quarts (US qt)' },
  { value: 'impQt', words: 'Imperial quarts (imp qt)' },
] as const satisfies readonly Option[];
