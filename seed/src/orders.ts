import { addDays } from '@quartermark/engine/calendar';
import { itemId, orderId } from './record-id.ts';
import type { SeedGarage } from './seed-garage.ts';

/** Parts that the invented club has ordered: one set comes late, one belt lies on the shelf. */
export function clubOrders(day: string): SeedGarage['orders'] {
  const on = (offset: number) => addDays(day, offset);
  return [
    {
      id: orderId(1),
      itemId: itemId(1, 5),
      order: { on: on(-3), expected: on(11), what: 'Front pads, one axle set' },
    },
    {
      id: orderId(2),
      itemId: itemId(2, 6),
      order: { on: on(-20), expected: on(-8), arrived: on(-6), what: 'Supercharger belt' },
    },
  ];
}
