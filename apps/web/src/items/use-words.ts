import type { IncidentSort, ItemInput, Measure, UseClass } from '@quartermark/engine/log';

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

/** What an item is to the models: what renews it, and what it is told by. */
export const ROLE_WORDS: Readonly<Record<ItemInput['role'], string>> = {
  engineOil: 'the engine oil',
  oilFilter: 'the oil filter',
  brakeFluid: 'the brake fluid',
  pads: 'brake pads',
  tyres: 'tyres',
  wheelFasteners: 'wheel bolts or nuts',
  other: 'anything else',
};

export const INCIDENT_NAME: Readonly<Record<IncidentSort, string>> = {
  off: 'Off the track or road',
  contact: 'Contact',
  overRev: 'Over-rev',
  softPedal: 'Soft brake pedal',
  overheating: 'Overheating',
  warningLamp: 'Warning lamp',
  lowOilPressure: 'Low oil pressure',
};
