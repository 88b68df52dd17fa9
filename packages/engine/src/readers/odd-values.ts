import { parseDay } from '../calendar/day-number.ts';
import type { Flag } from '../wear/result.ts';

/** Any object of a file whose members have not been looked at yet. */
export type Loose = Readonly<Record<string, unknown>>;

export function isLoose(value: unknown): value is Loose {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Days outside these years are typing errors, and keep date arithmetic inside four-digit years. */
const FIRST = '1900-01-01';
const LAST = '2199-12-31';

/** A civil date that exists, of the years 1900 to 2199. */
export function isDate(value: unknown): value is string {
  if (typeof value !== 'string' || value < FIRST || value > LAST) return false;
  try {
    parseDay(value);
    return true;
  } catch {
    return false;
  }
}

/** A value as a short text for a flag or a note. */
export function shortly(value: unknown): string {
  const text = JSON.stringify(value) ?? String(value);
  return text.length <= 60 ? text : `${Array.from(text).slice(0, 57).join('')}...`;
}

/**
 * Takes values out of a file one by one; what cannot be used becomes a flag and counts as not given.
 * An absent value (undefined or null) is no flag.
 */
export class OddValues {
  readonly flags: Flag[] = [];
  readonly #entry: string | null;
  readonly #on: string | null;

  constructor(entry: string | null = null, on: string | null = null) {
    this.#entry = entry;
    this.#on = on;
  }

  ignore(name: string, value: unknown): null {
    const text = `${name} ${shortly(value)}`;
    this.flags.push({ code: 'valueIgnored', entry: this.#entry, on: this.#on, value: text });
    return null;
  }

  number(name: string, value: unknown, min: number, max: number): number | null {
    if (value === undefined || value === null) return null;
    const usable = typeof value === 'number' && value >= min && value <= max;
    return usable ? value : this.ignore(name, value);
  }

  date(name: string, value: unknown): string | null {
    if (value === undefined || value === null) return null;
    return isDate(value) ? value : this.ignore(name, value);
  }

  /** minute of the day of "HH:MM" */
  minute(name: string, value: unknown): number | null {
    if (value === undefined || value === null) return null;
    const parts = typeof value === 'string' ? /^([01]\d|2[0-3]):([0-5]\d)$/.exec(value) : null;
    return parts === null ? this.ignore(name, value) : Number(parts[1]) * 60 + Number(parts[2]);
  }

  oneOf<const T extends string>(name: string, value: unknown, known: readonly T[]): T | null {
    if (value === undefined || value === null) return null;
    return known.find((one) => one === value) ?? this.ignore(name, value);
  }

  list(name: string, value: unknown): readonly unknown[] {
    if (value === undefined || value === null) return [];
    if (Array.isArray(value)) return value;
    this.ignore(name, value);
    return [];
  }
}
