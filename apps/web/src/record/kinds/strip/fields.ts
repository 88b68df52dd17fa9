import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import {
  type Members,
  number,
  type Problems,
  type Reading,
  text,
  typed,
  was,
} from '../../typed.ts';

const FIGURES = [
  'reactionS',
  'at60ftS',
  'at8thS',
  'at8thKmh',
  'at4thS',
  'at4thKmh',
  'dialInS',
] as const;

type PassFields = { lane: '' | 'left' | 'right' } & Record<(typeof FIGURES)[number], string>;

export type StripFields = {
  passes: number | null;
  launches: string;
  venue: string;
  weather: string;
  details: PassFields[];
};

const NO_PASS: PassFields = {
  lane: '',
  reactionS: '',
  at60ftS: '',
  at8thS: '',
  at8thKmh: '',
  at4thS: '',
  at4thKmh: '',
  dialInS: '',
};

export const emptyStrip = (): StripFields => ({
  passes: 1,
  launches: '',
  venue: '',
  weather: '',
  details: [],
});

export const stripFields = (entry: EntryOf<'strip'>): StripFields => ({
  passes: entry.passes.length,
  launches: typed(entry.launches),
  venue: entry.venue ?? '',
  weather: entry.weather ?? '',
  details: entry.passes.map((pass) => ({
    lane: pass.lane ?? '',
    reactionS: typed(pass.reactionS),
    at60ftS: typed(pass.at60ftS),
    at8thS: typed(pass.at8thS),
    at8thKmh: typed(pass.at8thKmh),
    at4thS: typed(pass.at4thS),
    at4thKmh: typed(pass.at4thKmh),
    dialInS: typed(pass.dialInS),
  })),
});

function readPass(fields: PassFields, path: string, problems: Problems): Members {
  const figures = FIGURES.map((name) => [name, number(fields[name], `${path}.${name}`, problems)]);
  return { lane: text(fields.lane), ...Object.fromEntries(figures) };
}

/** The most that the schema lets a day have; more is refused before so many are made. */
const PASSES_MAX = 100;

export function readStrip({ strip }: RecordFields, { base, problems }: Reading): Members {
  const count = strip.passes ?? 0;
  if (!Number.isInteger(count) || count < 1 || count > PASSES_MAX) {
    problems.passes = `Say how many passes: a whole number, 1 to ${PASSES_MAX}.`;
    return {};
  }
  const before = was('strip', base)?.passes ?? [];
  const passes = Array.from({ length: count }, (_, at) => ({
    ...before[at],
    ...readPass({ ...NO_PASS, ...strip.details[at] }, `passes.${at}`, problems),
  }));
  return {
    passes,
    launches: number(strip.launches, 'launches', problems),
    venue: text(strip.venue),
    weather: text(strip.weather),
  };
}
