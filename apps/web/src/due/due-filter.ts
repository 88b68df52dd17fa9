import type { DueOrder } from '@quartermark/engine/display';
import { civilDate } from '@quartermark/engine/log';

/** How the garage's list is sorted, and what of it is shown. */
export type DueFilter = {
  sort: DueOrder;
  /** the id of one car; null: all */
  car: string | null;
  state: DueState | null;
  /** as typed: only what falls due on days before this one; empty: all */
  before: string;
};

export const DUE_STATES = ['overdue', 'dueSoon', 'fine', 'unknown'] as const;
export type DueState = (typeof DUE_STATES)[number];

const SORTS = ['likely', 'early', 'car'] as const;

/** The three parts a list is made of, in the order in which they stand. */
export const DUE_PARTS = ['dated', 'apart', 'unsure'] as const;
export type DuePart = (typeof DUE_PARTS)[number];

export const WHOLE_LIST: DueFilter = { sort: 'likely', car: null, state: null, before: '' };

type Address = Readonly<Record<string, string | string[] | undefined>>;

export function sortNamed(name: string): DueOrder {
  return SORTS.find((known) => known === name) ?? 'likely';
}

export function stateNamed(name: string): DueState | null {
  return DUE_STATES.find((known) => known === name) ?? null;
}

/** The filter that a page's address carries; what it cannot read it leaves out. */
export function readDueFilter(address: Address): DueFilter {
  const one = (name: string) => {
    const value = address[name];
    return (Array.isArray(value) ? value[0] : value) ?? '';
  };
  return {
    sort: sortNamed(one('sort')),
    car: /^[\da-f-]{36}$/.test(one('car')) ? one('car') : null,
    state: stateNamed(one('state')),
    before: isDay(one('before')) ? one('before') : '',
  };
}

/** The filter as the query of an address, with its "?"; empty for the whole list by likely day. */
export function writeDueFilter({ sort, car, state, before }: DueFilter): string {
  const query = new URLSearchParams();
  if (sort !== 'likely') query.set('sort', sort);
  if (car) query.set('car', car);
  if (state) query.set('state', state);
  if (isDay(before)) query.set('before', before);
  const written = query.toString();
  return written === '' ? '' : `?${written}`;
}

const isDay = (text: string): boolean => civilDate.safeParse(text).success;
