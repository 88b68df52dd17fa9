import { addMonths } from '../calendar/add.ts';
import { madeFrom, readDateCode } from '../gear/date-code.ts';
import type { ComponentSort, EquipmentSort, GearInput, GearOf } from '../log/gear.ts';
import type { Limit } from '../log/item.ts';
import { HARD_ONLY, months } from './limits.ts';
import { askFor, type Proposal, propose } from './proposal.ts';

/**
 * The items that a component, a piece of equipment or a person is usually watched by. Labels and papers
 * have no usual life: their date is asked for, by the organiser's rule.
 *
 * Source: common practice, no published source, unless an item names another.
 */
export function proposeGearItems(gear: GearInput): Proposal[] {
  switch (gear.kind) {
    case 'equipment':
      return EQUIPMENT[gear.sort];
    case 'person':
      return PERSON;
    case 'component':
      return [...COMPONENT[gear.sort], ...(gear.sort === 'tyreSet' ? [tyreAge(gear)] : [])];
  }
}

const EQUIPMENT: Readonly<Record<EquipmentSort, Proposal[]>> = {
  torqueWrench: [
    propose(
      'torqueWrench',
      { name: 'Torque wrench, calibration', source: 'ISO 6789', leadDays: 14 },
      [months(12)],
      '12 months or 5,000 cycles, whichever comes first; cycles are not counted here. Sooner after a drop.',
    ),
  ],
  lift: [
    propose(
      'liftInspection',
      { name: 'Lift, inspection by a qualified inspector', warnDays: 30, leadDays: 14 },
      [months(12)],
      'And your own look before each use: locks, cables, arms, leaks. Local rules may ask for more.',
    ),
  ],
  jack: [
    propose(
      'jackInspection',
      { name: 'Jack, inspection', source: '29 CFR 1910.244' },
      [months(6)],
      'Every six months, and after a shock or an overload. Out of use until mended if it sinks or leaks.',
    ),
  ],
  stands: [
    propose(
      'standsLook',
      { name: 'Stands, look' },
      [months(12)],
      'Welds, pins, ratchets, feet. Your own look before each use as well.',
    ),
  ],
  extinguisher: [
    propose(
      'extinguisherLook',
      { name: 'Extinguisher, look', warnDays: 3 },
      [months(1)],
      'In its place, gauge in the green, pin and seal there.',
    ),
    propose(
      'extinguisherService',
      { name: 'Extinguisher, maintenance', warnDays: 30, leadDays: 14 },
      [months(12)],
      'By somebody licensed for it. Date of replacement by the label.',
    ),
  ],
  trailer: [
    propose(
      'trailerLook',
      { name: 'Trailer: tyres, brakes, lights, coupling' },
      [months(12)],
      'Trailer tyres age before they wear: read their date code.',
    ),
    askFor(
      'trailerPapers',
      { name: 'Trailer, road inspection', warnDays: 42 },
      'The date on the paper.',
      'label',
    ),
  ],
  other: [],
};

const BY_THE_RULES = 'The date on the label and what the organiser accepts: read both.';

const PERSON: Proposal[] = [
  askFor('helmet', { name: 'Helmet', warnDays: 60, leadDays: 14 }, BY_THE_RULES, 'label'),
  askFor('harness', { name: 'Harness', warnDays: 60, leadDays: 14 }, BY_THE_RULES, 'label'),
  askFor(
    'neckRestraint',
    { name: 'Neck restraint', warnDays: 60, leadDays: 14 },
    BY_THE_RULES,
    'label',
  ),
  askFor('licence', { name: 'Licence', warnDays: 60 }, 'The date on the paper.', 'label'),
];

function sessions(value: number): Limit {
  return { measure: 'sessions', value, weights: HARD_ONLY };
}

const COMPONENT: Readonly<Record<ComponentSort, Proposal[]>> = {
  tyreSet: [
    propose(
      'setLook',
      { name: 'Tread and cracks, look', role: 'tyres', leadDays: 14 },
      [sessions(5), months(6)],
      'Measure the least groove of each tyre: legal floors are 1.6 mm in the EU, 2/32 in in the US.',
    ),
  ],
  wheelSet: [
    propose(
      'wheelsLook',
      { name: 'Wheels, cracks and run-out', triggers: { incidents: ['off', 'contact'] } },
      [sessions(25), months(12)],
      'And after every off, contact or kerb.',
    ),
  ],
  pads: [
    propose(
      'padsLook',
      { name: 'Pads, look and measure', role: 'pads', leadDays: 7 },
      [sessions(5), months(6)],
      'Inner and outer. Start a circuit day above about half or 6 mm, end it above 3 mm.',
    ),
  ],
  discs: [
    propose(
      'discsLook',
      { name: 'Discs, look and measure', leadDays: 14 },
      [sessions(25), months(12)],
      'The least thickness or mass stands on the disc. Look for cracks that reach an edge.',
    ),
  ],
  clutch: [askFor('clutchLook', { name: 'Clutch, look' }, 'Whoever made it says when, if at all.')],
  engine: [
    askFor('rebuild', { name: 'Engine, strip and look' }, 'Whoever built it gives the hours.'),
  ],
  gearbox: [
    askFor('rebuild', { name: 'Gearbox, strip and look' }, 'Whoever built it gives the hours.'),
  ],
  other: [],
};

/** Tyre makers advise to take tyres off ten years after they were made, whatever their tread. */
const TYRE_MONTHS = 120;

function tyreAge({ dateCode }: GearOf<'component'>): Proposal {
  const item = { name: 'Tyres, age', role: 'tyres' as const, warnDays: 60, leadDays: 14 };
  const code = dateCode === undefined ? null : readDateCode(dateCode);
  if (code === null || 'problem' in code)
    return askFor(
      'tyreAge',
      item,
      'Read the four digits on the tyre and add ten years. A yearly look after five; track tyres go sooner.',
      'label',
    );
  return propose(
    'tyreAge',
    { ...item, source: 'tyre makers’ advice: ten years from manufacture' },
    [{ measure: 'date', value: addMonths(madeFrom(code), TYRE_MONTHS) }],
    'Ten years from the date code. A yearly look after five; track tyres go sooner. Some car makers say six.',
  );
}
