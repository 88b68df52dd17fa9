import type { EntryInput, EntryOf } from '../log/entry.ts';
import { INCIDENT_WORDS } from './cause-words.ts';
import { CORNER_WORDS } from './corner-words.ts';
import { formatDay } from './format-day.ts';
import { positionWords } from './gear-words.ts';
import { listWords } from './grammar.ts';
import { SEVERITY_WORDS } from './matter-words.ts';
import { typedWords } from './typed-words.ts';

/** see `entryLine()` */
type Names = Readonly<Record<string, string>>;
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

const RESULT = { passed: 'passed', conditional: 'passed with conditions', failed: 'failed' };
const WHEELS = {
  off: 'taken off',
  torqued: 'tightened to torque',
  rechecked: 'torque checked again',
};
const FITTED = { on: 'fitted', off: 'taken off', moved: 'moved' };
const BEDDED = {
  bedded: 'bedded',
  firstSession: 'to be bedded in the first session',
  notBedded: 'not bedded yet',
};
const HANDED = { bought: 'from', sold: 'to', lent: 'to', returned: 'by' };
const STORED = {
  disconnected: 'disconnected',
  plugged: 'plugged',
  drained: 'drained',
  blownUp: 'blown up',
  covered: 'covered',
  other: 'seen to',
};

/** What an entry of a less common kind says, in parts, figures as typed. */
export function otherEntryParts(entry: OtherEntry, names: Names): Part[] {
  switch (entry.kind) {
    case 'fluid':
      return [entry.which, entry.levelText, entry.added && `${typedWords(entry.added)} added`];
    case 'inspection':
      return inspectionParts(entry);
    case 'measure':
      return measureParts(entry, names);
    case 'fit':
      return [
        names[entry.component],
        FITTED[entry.change],
        positionWords(entry.positions ?? []),
        entry.condition,
        entry.bedding && BEDDED[entry.bedding],
      ];
    case 'wheels':
      return [
        WHEELS[entry.change],
        entry.which && cornerList(entry.which),
        entry.torque && typedWords(entry.torque),
        entry.cold === true && 'cold',
      ];
    case 'finding':
      return [
        entry.what,
        entry.where && (CORNER_WORDS[entry.where] ?? entry.where),
        SEVERITY_WORDS[entry.severity].toLowerCase(),
        entry.dueBy && `to be done by ${formatDay(entry.dueBy)}`,
        entry.resolvedBy !== undefined && 'dealt with',
      ];
    case 'incident':
      return [INCIDENT_WORDS[entry.what].toLowerCase(), entry.detail];
    case 'layUp':
      return [
        entry.until && `until ${formatDay(entry.until)}`,
        storageWords(entry.lines),
        entry.keysAt && `keys: ${entry.keysAt}`,
      ];
    case 'wakeUp':
      return [undoneWords(entry.lines)];
    case 'meterReplaced':
      return [
        entry.oldLast ? `old one last at ${typedWords(entry.oldLast)}` : 'old value not known',
        `new one first at ${typedWords(entry.newFirst)}`,
      ];
    case 'repair':
      return [entry.text, entry.affectsOilUse === true && 'may change how much oil it uses'];
    case 'labReport':
      return [entry.laboratory, figureWords(entry.figures)];
    case 'handover':
      return [entry.who ? `${entry.what} ${HANDED[entry.what]} ${entry.who}` : entry.what];
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

function measureParts(entry: EntryOf<'measure'>, names: Names): Part[] {
  const { oilPressureAtRpm: atRpm } = entry;
  return [
    entry.component && names[entry.component],
    ...(entry.tread ?? []).map(
      ({ corner, groove, depth }) =>
        `tread ${CORNER_WORDS[corner]}${groove ? `, ${groove},` : ''} ${typedWords(depth)}`,
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

type StorageLines = EntryOf<'layUp'>['lines'];

function storageWords(lines: StorageLines): Part {
  return lines?.map(({ what, how }) => `${what} ${STORED[how]}`).join(', ');
}

function undoneWords(lines: StorageLines): Part {
  const names = lines?.map(({ what }) => what) ?? [];
  return names.length > 0 && `undone: ${listWords(names, names.length)}`;
}

function cornerList(corners: readonly string[]): string {
  return listWords(
    corners.map((corner) => CORNER_WORDS[corner] ?? corner),
    4,
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
