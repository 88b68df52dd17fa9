import { addDays } from '@quartermark/engine/calendar';
import type { WatchedItem } from '../car/ItemList.tsx';
import type { Owned } from '../items/owned.ts';
import styles from './Orders.module.css';
import { partsOf } from './parts-of.ts';

/** Until the next look, a week on: as long as what is due soon is told ahead. */
const NEXT_LOOK_DAYS = 7;

type PartsLineProps = { row: WatchedItem; owned: Owned };

/** What a list says of an item's parts: what is ordered or here; to be ordered only where that is near. */
export function PartsLine({ row: { id, item, result }, owned }: PartsLineProps) {
  const { today } = owned.garage;
  const orders = owned.orders.filter(({ itemId }) => itemId === id).map(({ order }) => order);
  const said = partsOf({ item, orders, result, today });
  if (!said) return null;
  const near = addDays(today, item.warnDays + NEXT_LOOK_DAYS);
  if (said.by.kind === 'orderBy' && said.by.day > near) return null;
  return <p className={styles.soft}>{said.words.charAt(0).toUpperCase() + said.words.slice(1)}</p>;
}
