import {
  type EntryInput,
  type EntryKind,
  type EventInput,
  USE_OF_SORT,
} from '@quartermark/engine/log';
import type { Problems } from '../items/limit-fields.ts';
import { readRecord } from '../record/read-record.ts';
import { emptyFields, type RecordFields } from '../record/record-fields.ts';
import { type CarFields, isMeasured, isUsed } from './debrief-fields.ts';
import { DID_NOT_GO } from './did-not-go.ts';
import { closingDay, daysOfUse, USE_KIND } from './expected-use.ts';
import { partKey } from './part-key.ts';
import { shownUse } from './shown-use.ts';

/** A line of a car's debrief: an entry of its own. */
export type Part = { key: string; entry: EntryInput };

/** The lines of a car that were filled in, and what is wrong with the others, by line and path. */
export type ReadCar = { parts: Part[]; problems: Record<string, Problems> };

export type CarAbout = {
  carId: string;
  eventId: string;
  event: EventInput;
  zone: string;
  /** the garage's day */
  today: string;
  volumeUnit: 'l' | 'usQt' | 'impQt';
  /** uses of the car that are on record already and belong to the event */
  recorded: readonly EntryInput[];
  /** a line's id, made once */
  idOf: (key: string) => string;
};

/** Reads what was filled in of a car, line by line. Nothing is read of a car nobody has spoken of. */
export function readCar(car: CarFields, about: CarAbout): ReadCar {
  const reading = new CarReading(car, about);
  if (car.went === 'no') reading.stayed();
  if (car.went === 'yes') reading.went();
  return reading.read;
}

class CarReading {
  readonly read: ReadCar = { parts: [], problems: {} };
  readonly #last: string;

  constructor(
    readonly car: CarFields,
    readonly about: CarAbout,
  ) {
    this.#last = closingDay(about.event, about.today);
  }

  stayed(): void {
    const { carId, eventId } = this.about;
    this.#add(partKey.stayed(carId), 'answer', this.#last, () => ({
      answer: { notice: eventId, answer: DID_NOT_GO, checked: [] },
    }));
  }

  went(): void {
    const { carId, event, today, recorded } = this.about;
    for (const on of daysOfUse(event, today)) this.#use(on);
    const used = this.read.parts.length + Object.keys(this.read.problems).length > 0;
    if (!used && recorded.length === 0)
      this.read.problems[partKey.car(carId)] = {
        'entry.use': 'Say what it did there, or that it did not go.',
      };
    this.#oil();
    this.#odometer();
    this.#measured();
    this.#findings();
  }

  #use(on: string): void {
    const { carId, eventId, event } = this.about;
    const use = shownUse(this.car, on, this.about);
    if (!isUsed(use)) return;
    const { distance: text, hours } = use;
    const distance = { text: text ?? '', unit: this.car.unit };
    const count = wholeOf(use.count);
    this.#add(partKey.use(carId, on), USE_KIND[event.sort], on, (empty) => ({
      session: {
        ...empty.session,
        use: event.sort === 'autocross' ? 'autocross' : 'circuit',
        sessions: count,
        distance,
        hours,
        event: eventId,
      },
      strip: { ...empty.strip, passes: count },
      drive: {
        use: USE_OF_SORT[event.sort] === 'touring' ? 'touring' : 'road',
        distance,
        until: this.#last === on ? '' : this.#last,
      },
    }));
  }

  /** What was added and the level after it are one reading; two would have no order among them. */
  #oil(): void {
    const { carId } = this.about;
    const { level, added } = this.car;
    const key = partKey.oil(carId);
    if (added.text.trim() !== '')
      this.#after(key, 'oilTopUp', (empty) => ({
        oilTopUp: { ...empty.oilTopUp, volume: added, after: level },
      }));
    else if (level !== '')
      this.#after(key, 'oilCheck', (empty) => ({ oilCheck: { ...empty.oilCheck, level } }));
  }

  #odometer(): void {
    const { odometer } = this.car;
    if (odometer.text.trim() === '') return;
    this.#after(partKey.odometer(this.about.carId), 'odometer', () => ({ odometer }));
  }

  #measured(): void {
    for (const [gearId, measured] of Object.entries(this.car.measured))
      if (isMeasured(measured))
        this.#after(partKey.measure(this.about.carId, gearId), 'measure', (empty) => ({
          measure: { ...empty.measure, ...measured, component: gearId },
        }));
  }

  #findings(): void {
    this.car.findings.forEach((finding, at) => {
      const { what, severity, corner, place } = finding;
      if ([what, severity, corner, place].every((said) => said.trim() === '')) return;
      this.#after(partKey.finding(this.about.carId, at), 'finding', () => ({ finding }));
    });
  }

  /** What is looked at once the driving is over. */
  #after(key: string, kind: EntryKind, own: Own): void {
    this.#add(key, kind, this.#last, (empty) => ({ ...own(empty), dayOrder: 'afterDriving' }));
  }

  #add(key: string, kind: EntryKind, on: string, own: Own): void {
    const { carId, zone, volumeUnit, idOf } = this.about;
    const empty = emptyFields({
      entryId: idOf(key),
      today: on,
      unit: this.car.unit,
      volumeUnit,
      last: null,
    });
    const read = readRecord(
      { ...empty, ...own(empty) },
      { base: null, fresh: { kind, zone, car: carId } },
    );
    if ('entry' in read) this.read.parts.push({ key, entry: read.entry });
    else this.read.problems[key] = read.problems;
  }
}

type Own = (empty: RecordFields) => Partial<RecordFields>;

/** Null for what is no whole number: the kind's own words say what is wanted. */
function wholeOf(text: string | null): number | null {
  const value = Number((text ?? '').trim() || Number.NaN);
  return Number.isInteger(value) ? value : null;
}
