import type { Measure, UseClass } from '@quartermark/engine/log';

export const USE_NAME: Readonly<Record<UseClass, string>> = {
  road: 'Road',
  touring: 'Road trips',
  circuit: 'Circuits',
  strip: 'Drag strip',
  autocross: 'Autocross',
};

export const MEASURE_NAME: Readonly<Record<Measure, string>> = {
  km: 'Distance',
  hours: 'Hours of running',
  sessions: 'Sessions',
  launches: 'Launches',
  months: 'Months',
  days: 'Days',
  date: 'Date on its label',
};

/** One of what a measure counts, to write a weight beside. */
export const MEASURE_ONE: Readonly<Record<'hours' | 'sessions' | 'launches', string>> = {
  hours: 'hour',
  sessions: 'session',
  launches: 'launch',
};
