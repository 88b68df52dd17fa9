import type { EventSort } from '@quartermark/engine/log';

/** (common practice, no source) What goes into the bag for any outing. */
const ALWAYS = [
  'Tyre gauge and a pump',
  'Funnel, rags and gloves',
  'Extinguisher and first-aid kit',
  'Licence, papers and the key’s spare',
] as const;

/** (common practice, no source) What an outing of the sort asks for beside that. */
const BESIDE: Readonly<Record<EventSort, readonly string[]>> = {
  meet: [],
  roadTrip: ['Jack and wheel key of the car', 'Warning triangle and vests', 'Coolant or water'],
  circuit: [
    'Torque wrench with the socket that fits the wheels',
    'Jack and two stands',
    'Brake fluid, bleeding hose and spanner',
    'Towing eye, tape and a torch',
    'Helmet and what else the rules ask of those who drive',
  ],
  dragStrip: [
    'Torque wrench with the socket that fits the wheels',
    'Jack and two stands',
    'Gauge for low pressures',
    'Helmet and what else the rules ask of those who drive',
  ],
  autocross: [
    'Torque wrench with the socket that fits the wheels',
    'Jack and two stands',
    'Tape for numbers, a torch',
    'Helmet and what else the rules ask of those who drive',
  ],
};

/** What is usually packed beside oil and fuel. Common practice, no source. */
export const usualKit = (sort: EventSort): readonly string[] => [...BESIDE[sort], ...ALWAYS];
