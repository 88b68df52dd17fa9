import type { Distance } from '@quartermark/engine/log';
import type { AddedUse } from '@quartermark/engine/what-if';
import { readLine, writeLine } from '../what-if/added-address.ts';
import { lineOf } from '../what-if/added-fields.ts';
import { type EventFields, emptyEvent } from './event-fields.ts';

type Address = Readonly<Record<string, string | string[] | undefined>>;

/** Where an event is added that is filled in already. @param carId the car that goes */
export function addEventAddress(garageId: string, added: AddedUse, carId: string): string {
  const query = new URLSearchParams({ plan: writeLine(added), car: carId });
  return `/g/${garageId}/events/add?${query.toString()}`;
}

/** What an address fills in of a new event; null where it carries nothing that can be read. */
export function eventOfAddress({ plan, car }: Address, unit: Distance['unit']): EventFields | null {
  const added = typeof plan === 'string' ? readLine(plan) : null;
  if (added === null) return null;
  const cars = typeof car === 'string' && /^[\da-f-]{36}$/.test(car) ? [car] : [];
  return { ...emptyEvent(unit), ...lineOf(added, unit), cars };
}
