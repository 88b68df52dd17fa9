import type { ItemInput } from '@quartermark/engine/log';

/**
 * A removed item as it is added again. It is a new item: services recorded under the removed one speak of
 * that one, so the day of the last of them becomes the day it was last done. Nothing is claimed of the
 * log's being whole unless the item itself said so of that very day.
 *
 * @param service civil date of the last service the removed one was counted from; null if not on record
 */
export function addedAgain(item: ItemInput, service: string | null): ItemInput {
  if (service === null || service === item.baseline?.on) return item;
  return { ...item, baseline: { on: service } };
}
