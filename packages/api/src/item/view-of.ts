import { itemInput } from '@quartermark/engine/log';
import type { ItemView } from '../views.ts';

export function itemViewOf(row: {
  id: string;
  revision: number;
  position: number;
  body: unknown;
}): ItemView {
  const { id, revision, position, body } = row;
  const item = itemInput.safeParse(body);
  // an item that a later schema faults is shown as it stands
  return { id, revision, position, item: item.success ? item.data : (body as ItemView['item']) };
}
