import { addDays } from '@quartermark/engine/calendar';
import { formatDay } from '@quartermark/engine/display';
import type { OrderDraft, OrderInput } from '@quartermark/engine/log';
import type { VersionLine } from '../forms/version-rows.ts';
import type { Problems } from '../items/limit-fields.ts';

/** What the form of a new order holds. */
export type NewOrderFields = {
  on: string;
  /** days from the order on; null: nobody said */
  expectedIn: number | null;
  what: string;
  from: string;
};

/** What the form of an order on record holds: everything as typed. */
export type OrderFields = {
  /** revision the fields were taken from */
  baseRevision: number;
  on: string;
  expected: string;
  arrived: string;
  what: string;
  from: string;
};

/** Where nobody has said how long parts take (common practice, no source). */
const USUAL_DAYS = 7;

/** @param leadDays as the item says; 0: it does not say */
export function newOrderFields(today: string, leadDays: number): NewOrderFields {
  return { on: today, expectedIn: leadDays === 0 ? USUAL_DAYS : leadDays, what: '', from: '' };
}

export function orderFields(order: OrderInput, revision: number): OrderFields {
  const { on, expected = '', arrived = '', what = '', from = '' } = order;
  return { baseRevision: revision, on, expected, arrived, what, from };
}

type ReadOrder = { order: OrderDraft } | { problems: Problems };

/** The day on which a new order is expected; empty where nobody said. */
export function expectedDay({ on, expectedIn }: NewOrderFields): string {
  return on === '' || expectedIn === null || expectedIn < 0 ? '' : addDays(on, expectedIn);
}

export function readNewOrder(fields: NewOrderFields): ReadOrder {
  const { on, what, from } = fields;
  const expected = expectedDay(fields);
  return readOrder({ baseRevision: 0, on, expected, arrived: '', what, from });
}

/** What is wrong with the form's fields, by the path the server would name. */
export function readOrder({ on, expected, arrived, what, from }: OrderFields): ReadOrder {
  const problems: Problems = {};
  if (on === '') problems['order.on'] = 'Choose the day of the order.';
  if (on !== '' && expected !== '' && expected < on)
    problems['order.expected'] = 'It is expected before it was ordered; correct one of the days.';
  if (on !== '' && arrived !== '' && arrived < on)
    problems['order.arrived'] = 'It arrived before it was ordered; correct one of the days.';
  if (Object.keys(problems).length > 0) return { problems };
  const text = (name: 'what' | 'from', typed: string) =>
    typed.trim() === '' ? {} : { [name]: typed };
  return {
    order: {
      on,
      ...(expected === '' ? {} : { expected }),
      ...(arrived === '' ? {} : { arrived }),
      ...text('what', what),
      ...text('from', from),
    },
  };
}

/** An order in words, a line for each thing its form can change. */
export function orderLines({ on, expected, arrived, what, from }: OrderInput): VersionLine[] {
  return [
    { label: 'Ordered', words: formatDay(on) },
    { label: 'Expected', words: expected === undefined ? 'Not said' : formatDay(expected) },
    { label: 'Arrived', words: arrived === undefined ? 'Not yet' : formatDay(arrived) },
    { label: 'What', words: what ?? 'Not said' },
    { label: 'From where', words: from ?? 'Not said' },
  ];
}
