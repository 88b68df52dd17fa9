import type { EntryInput, EntryOf, ReadingCondition } from '../log/entry.ts';
import { CORNER_WORDS } from './corner-words.ts';
import { formatDay } from './format-day.ts';
import { formatCount, formatHours } from './format-quantity.ts';
import { listWords } from './grammar.ts';
import { KIND_WORDS } from './kind-words.ts';
import { otherEntryParts } from './other-entry-parts.ts';
import { stickWords, typedWords } from './typed-words.ts';

export type EntryLine = {
  /** what happened, such as "Oil added" */
  title: string;
  /** the figures, exactly as typed; without the note; may be empty */
  detail: string;
};

/** Names of service items, as the car's page has them. */
export type NamedItems = readonly { id: string; item: { name: string } }[];

/** Names of sets, parts and items by id, where the caller has them. */
export type Names = Readonly<Record<string, string>>;

type Part = string | false | null | undefined;

/**
 * An entry in one line: what happened and its figures, letter for letter as they were typed. Day, time
 * and note stand elsewhere.
 *
 * @param items names of the car's items; one that is gone is called "an item no longer watched"
 * @param names names by id of sets and parts, and of items that are none of the car's; what has none
 *   is left out, an id is never shown
 * @example
 * entryLine({ kind: 'oilTopUp', volume: { text: '0.5', unit: 'l' }, toMax: true, ... })
 * // { title: "Oil added", detail: "0.5 L, to MAX" }
 */
export function entryLine(entry: EntryInput, items: NamedItems = [], names: Names = {}): EntryLine {
  const own = ownParts(entry, items, names);
  const read = entry.kind !== 'odometer' && entry.odometer;
  const parts = [
    ...own,
    read && `odometer ${typedWords(read)}`,
    entry.driver && `driven by ${entry.driver}`,
  ];
  return { title: titleOf(entry), detail: withRemarks(joined(parts), entry) };
}

/** Remarks are sentences of their own. */
function withRemarks(detail: string, entry: EntryInput): string {
  if (entry.kind !== 'session' || entry.remarks === undefined) return detail;
  return `${detail}. ${entry.remarks}`;
}

function joined(parts: readonly Part[]): string {
  return parts.filter((part): part is string => typeof part === 'string' && part !== '').join(', ');
}

function titleOf(entry: EntryInput): string {
  if (entry.kind === 'drive') return entry.use === 'touring' ? 'Road trip' : 'Drive';
  if (entry.kind === 'session') return entry.use === 'circuit' ? 'Circuit' : 'Autocross';
  if (entry.kind === 'meterReplaced')
    return entry.meter === 'odometer' ? 'Odometer replaced' : 'Hour meter replaced';
  return KIND_WORDS[entry.kind];
}

function ownParts(entry: EntryInput, items: NamedItems, names: Names): Part[] {
  switch (entry.kind) {
    case 'odometer':
      return [typedWords(entry.odometer), hourMeter(entry.hourMeter)];
    case 'fuel':
      return fuelParts(entry);
    case 'oilCheck':
      return [stickWords(entry.level), conditionWords(entry.condition)];
    case 'oilTopUp':
      return topUpParts(entry);
    case 'oilChange':
      return oilChangeParts(entry);
    case 'drive':
      return [
        entry.distance && typedWords(entry.distance),
        entry.until && `until ${formatDay(entry.until)}`,
      ];
    case 'session':
      return sessionParts(entry, names);
    case 'strip':
      return stripParts(entry);
    case 'service':
      return serviceParts(entry, items, names);
    case 'fluid':
    case 'inspection':
    case 'measure':
    case 'fit':
    case 'wheels':
    case 'finding':
    case 'incident':
    case 'layUp':
    case 'wakeUp':
    case 'meterReplaced':
    case 'repair':
    case 'labReport':
    case 'handover':
    case 'answer':
    case 'note':
      return otherEntryParts(entry, names);
  }
}

function hourMeter(typed: { text: string; unit: string } | undefined): Part {
  return typed && `hour meter ${typedWords(typed)}`;
}

function conditionWords(condition: ReadingCondition | undefined): Part {
  if (condition === undefined) return null;
  const { state, minutesAfterStop, oilTempC } = condition;
  const stopped =
    minutesAfterStop === undefined
      ? 'hot, engine stopped'
      : `hot, ${formatCount(minutesAfterStop, 'minute')} after stopping`;
  const words = { hotIdle: 'read hot at idle', hotStopped: `read ${stopped}`, cold: 'read cold' };
  return joined([words[state], oilTempC !== undefined && `oil at ${oilTempC} °C`]);
}

function fuelParts(entry: EntryOf<'fuel'>): Part[] {
  return [
    typedWords(entry.volume),
    entry.full === true && 'filled up',
    entry.octane !== undefined && `${entry.octane} octane`,
    entry.price && `paid ${entry.price}`,
  ];
}

function productParts(entry: { product?: string; grade?: string; approval?: string }): Part[] {
  return [entry.product, entry.grade, entry.approval];
}

function topUpParts(entry: EntryOf<'oilTopUp'>): Part[] {
  return [
    entry.volume && typedWords(entry.volume),
    entry.toMax === true && 'to MAX',
    entry.levelBefore && `before: ${stickWords(entry.levelBefore)}`,
    entry.levelAfter && `after: ${stickWords(entry.levelAfter)}`,
    conditionWords(entry.condition),
    ...productParts(entry),
  ];
}

function oilChangeParts(entry: EntryOf<'oilChange'>): Part[] {
  return [
    entry.drained && `${typedWords(entry.drained)} drained`,
    entry.filled && `${typedWords(entry.filled)} filled`,
    entry.filterRenewed ? 'filter renewed' : 'filter kept',
    entry.levelAfter && `after: ${stickWords(entry.levelAfter)}`,
    conditionWords(entry.condition),
    ...productParts(entry),
  ];
}

function sessionParts(entry: EntryOf<'session'>, names: Names): Part[] {
  return [
    formatCount(entry.sessions, 'session'),
    entry.venue && `at ${entry.venue}`,
    entry.distance && typedWords(entry.distance),
    entry.hours !== undefined && formatHours(entry.hours),
    entry.laps !== undefined && formatCount(entry.laps, 'lap'),
    entry.oilTempPeak && `oil up to ${typedWords(entry.oilTempPeak)}`,
    entry.coolantTempPeak && `coolant up to ${typedWords(entry.coolantTempPeak)}`,
    entry.fuelUsed && `${typedWords(entry.fuelUsed)} of fuel`,
    entry.tyreSet && names[entry.tyreSet] && `on ${names[entry.tyreSet]}`,
    pressureWords('cold', entry.pressuresCold),
    pressureWords('hot', entry.pressuresHot),
  ];
}

function pressureWords(when: string, read: EntryOf<'session'>['pressuresCold']): Part {
  const parts = Object.entries(read ?? {}).map(
    ([corner, pressure]) => `${CORNER_WORDS[corner]} ${typedWords(pressure)}`,
  );
  return parts.length > 0 && `tyres ${when}: ${parts.join(', ')}`;
}

function stripParts(entry: EntryOf<'strip'>): Part[] {
  const passes = entry.passes.length;
  return [
    formatCount(passes, 'pass', 'passes'),
    entry.launches !== undefined &&
      entry.launches !== passes &&
      formatCount(entry.launches, 'launch', 'launches'),
    entry.venue && `at ${entry.venue}`,
    entry.weather,
  ];
}

function serviceParts(entry: EntryOf<'service'>, items: NamedItems, names: Names): Part[] {
  const done = entry.items.map(
    (id) => items.find((item) => item.id === id)?.item.name ?? names[id] ?? null,
  );
  const gone = done.filter((name) => name === null).length;
  const known = done.filter((name) => name !== null);
  const lost =
    gone > 0 ? [gone === 1 ? 'an item no longer watched' : `${gone} items no longer watched`] : [];
  return [
    listWords([...known, ...lost], known.length + lost.length),
    entry.parts && entry.parts.length > 0 && `parts: ${listWords(entry.parts, entry.parts.length)}`,
    entry.byWhom && `by ${entry.byWhom}`,
    entry.cost && `cost ${entry.cost}`,
    hourMeter(entry.hourMeter),
    entry.historyComplete === true && 'all use since then is in the log',
  ];
}
