import type { EntryInput, EntryOf } from '../log/entry.ts';
import { CORNER_WORDS } from './corner-words.ts';
import { formatDay } from './format-day.ts';
import { formatCount } from './format-quantity.ts';
import { typedWords } from './typed-words.ts';

type Part = string | false | null | undefined;

/** Kinds that a garage meets less often than driving, oil and service. */
type OtherEntry = Exclude<
  EntryInput,
  {
    kind:
      | 'odometer'
      | 'fuel'
      | 'oilCheck'
      | 'oilTopUp'
      | 'oilChange'
      | 'drive'
      | 'session'
      | 'strip'
      | 'service';
  }
>;

const SEVERITY = {
  doNotDrive: 'do not drive',
  beforeHardUse: 'before hard use',
  watch: 'keep an eye on it',
  cosmetic: 'looks only',
};
const INCIDENT = {
  off: 'off the track',
  contact: 'contact',
  overRev: 'engine over-revved',
  softPedal: 'soft brake pedal',
  overheating: 'overheating',
  warningLamp: 'warning lamp',
  lowOilPressure: 'low oil pressure',
};
const RESULT = { passed: 'passed', conditional: 'passed with conditions', failed: 'failed' };
const WHEELS = {
  off: 'taken off',
  torqued: 'tightened to torque',
  rechecked: 'torque checked again',
};
const FITTED = { on: 'fitted', off: 'taken off', moved: 'moved' };

/** What an entry of a less common kind says, in parts, figures as typed. */
export function otherEntryParts(entry: OtherEntry): Part[] {
  switch (entry.kind) {
    case 'fluid':
      return [entry.which, entry.levelText, entry.added && `${typedWords(entry.added)} added`];
    case 'inspection':
      return inspectionParts(entry);
    case 'measure':
      return measureParts(entry);
    case 'fit':
      return [FITTED[entry.change], entry.positions?.join(' and '), entry.condition];
    case 'wheels':
      return [
        WHEELS[entry.change],
        entry.which?.map((corner) => CORNER_WORDS[corner]).join(' and '),
        entry.torque && typedWords(entry.torque),
        entry.cold === true && 'cold',
      ];
    case 'finding':
      return [
        entry.what,
        entry.where && (CORNER_WORDS[entry.where] ?? entry.where),
        SEVERITY[entry.severity],
        entry.dueBy && `to be done by ${formatDay(entry.dueBy)}`,
        entry.resolvedBy !== undefined && 'dealt with',
      ];
    case 'incident':
      return [INCIDENT[entry.what], entry.detail];
    case 'layUp':
      return [
        entry.until && `until ${formatDay(entry.until)}`,
        storageWords(entry.lines),
        entry.keysAt && `keys: ${entry.keysAt}`,
      ];
    case 'wakeUp':
      return [storageWords(entry.lines)];
    case 'meterReplaced':
      return [
        entry.oldLast ? `old one last at ${typedWords(entry.oldLast)}` : 'old value not known',
        `new one first at ${typedWords(entry.newFirst)}`,
      ];
    case 'repair':
      return [entry.text];
    case 'labReport':
      return [entry.laboratory, figureWords(entry.figures)];
    case 'handover':
      return [entry.what, entry.who];
    case 'answer':
      return [
        entry.answer,
        entry.checked !== undefined &&
          entry.checked.length > 0 &&
          `looked at: ${entry.checked.join('; ')}`,
      ];
    case 'note':
      return [];
  }
}

function inspectionParts(entry: EntryOf<'inspection'>): Part[] {
  return [
    entry.purpose,
    RESULT[entry.result],
    entry.byWhom && `by ${entry.byWhom}`,
    entry.sticker && `sticker ${entry.sticker}`,
    entry.noiseDb !== undefined && `${entry.noiseDb} dB`,
    entry.validTo && `good through ${formatDay(entry.validTo)}`,
  ];
}

function measureParts(entry: EntryOf<'measure'>): Part[] {
  const { oilPressureAtRpm: atRpm } = entry;
  return [
    ...(entry.tread ?? []).map(
      (read) => `tread ${CORNER_WORDS[read.corner]} ${typedWords(read.depth)}`,
    ),
    entry.dateCode && `date code ${entry.dateCode}`,
    ...(entry.pads ?? []).flatMap(({ corner, inner, outer }) => [
      inner && `pad ${CORNER_WORDS[corner]} inner ${typedWords(inner)}`,
      outer && `pad ${CORNER_WORDS[corner]} outer ${typedWords(outer)}`,
    ]),
    ...(entry.discs ?? []).map(
      ({ corner, thickness, massG }) =>
        `disc ${CORNER_WORDS[corner]} ${thickness ? typedWords(thickness) : `${massG ?? 'not read'} g`}`,
    ),
    entry.cracks && `cracks: ${entry.cracks}`,
    entry.batteryV !== undefined && `battery ${entry.batteryV} V`,
    entry.brakeFluidTest && `brake fluid ${entry.brakeFluidTest}`,
    entry.oilPressureHotIdle && `oil pressure, hot idle, ${typedWords(entry.oilPressureHotIdle)}`,
    atRpm && `oil pressure ${typedWords(atRpm.pressure)} at ${atRpm.rpm} rpm`,
    ...Object.entries(entry.pressures ?? {}).map(
      ([corner, pressure]) => `tyre ${CORNER_WORDS[corner]} ${typedWords(pressure)}`,
    ),
  ];
}

function storageWords(lines: readonly { what: string }[] | undefined): Part {
  return (
    lines &&
    lines.length > 0 &&
    formatCount(lines.length, 'thing written down', 'things written down')
  );
}

function figureWords(figures: Readonly<Record<string, number>> | undefined): Part {
  return (
    figures &&
    Object.entries(figures)
      .map(([name, value]) => `${name} ${value}`)
      .join(', ')
  );
}
