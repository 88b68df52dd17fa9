import { ENTRY_KINDS, type EntryKind } from '@quartermark/engine/log';

/**
 * What can be recorded, grouped by when it is asked for and the fast ones first. An answer is not among
 * it: it is opened from the finding or the incident that it answers.
 */
export const KIND_GROUPS = [
  {
    title: 'At the car',
    kinds: ['oilCheck', 'oilTopUp', 'session', 'wheels', 'fuel', 'finding', 'odometer'],
  },
  { title: 'Driving', kinds: ['drive', 'strip', 'incident'] },
  { title: 'Work on the car', kinds: ['service', 'oilChange', 'fit', 'repair', 'meterReplaced'] },
  { title: 'Looking it over', kinds: ['measure', 'fluid', 'inspection', 'labReport'] },
  { title: 'Storage and the rest', kinds: ['layUp', 'wakeUp', 'handover', 'note'] },
] as const satisfies readonly { title: string; kinds: readonly EntryKind[] }[];

/** @param text a part of an address */
export function entryKindOf(text: string): EntryKind | null {
  return ENTRY_KINDS.find((kind) => kind === text) ?? null;
}

/** What stands under the name of a kind where it is chosen. */
export const KIND_HINT: Readonly<Record<EntryKind, string>> = {
  oilCheck: 'What the stick shows',
  oilTopUp: 'A bottle or any amount',
  session: 'Circuit or autocross',
  wheels: 'Off, torqued, checked again',
  fuel: 'What went into the tank',
  finding: 'Something is not right',
  odometer: 'What it shows now',
  drive: 'Road, or a road trip',
  strip: 'Passes on a day',
  incident: 'Something went wrong',
  service: 'Items that were done',
  oilChange: 'Out, in, and the filter',
  fit: 'A set or part on, off, moved',
  repair: 'Something was mended',
  meterReplaced: 'Odometer or hour meter',
  measure: 'Tread, pads, discs, pressures',
  fluid: 'A level, or some added',
  inspection: 'Passed or not, and the label',
  labReport: 'Figures from a laboratory',
  layUp: 'Put away, and how',
  wakeUp: 'Back into use',
  handover: 'Bought, sold, lent, back',
  note: 'Anything else',
  answer: 'To a finding or an incident',
};

/** What the form of a kind asks, as the first line of its page. */
export const KIND_QUESTION: Readonly<Record<EntryKind, string>> = {
  oilCheck: 'Where does the oil stand on the stick?',
  oilTopUp: 'How much oil went in?',
  session: 'How many sessions were driven?',
  wheels: 'What was done to the wheels?',
  fuel: 'How much fuel went in?',
  finding: 'What did you find, and how bad is it?',
  odometer: 'What does the odometer show?',
  drive: 'Where did it go, and how far?',
  strip: 'How many passes were run?',
  incident: 'What went wrong?',
  service: 'What was done?',
  oilChange: 'What went out, and what went in?',
  fit: 'Which part went on, off or elsewhere?',
  repair: 'What was repaired?',
  meterReplaced: 'Which instrument was replaced, and what do both show?',
  measure: 'What did you measure?',
  fluid: 'Which fluid, and how does it stand?',
  inspection: 'What was inspected, and how did it go?',
  labReport: 'What did the laboratory find?',
  layUp: 'How was it put away?',
  wakeUp: 'What was undone before it runs again?',
  handover: 'Whose hands did it change into?',
  note: 'What is to be remembered?',
  answer: 'What was done about it?',
};

const WITH_PHOTOS: readonly EntryKind[] = [
  'finding',
  'incident',
  'note',
  'repair',
  'inspection',
  'measure',
];

/** Whether a kind of entry asks for photos. */
export function hasPhotos(kind: EntryKind): boolean {
  return WITH_PHOTOS.includes(kind);
}

const USES: readonly EntryKind[] = ['drive', 'session', 'strip'];

/** Whether a kind of entry drives the car, so that its place in the day is told against work on it. */
export function isUse(kind: EntryKind): boolean {
  return USES.includes(kind);
}
