'use client';

import type { ItemView } from '@quartermark/api/client';
import { orderStands } from '@quartermark/engine/orders';
import { FormSection } from '../forms/Form.tsx';
import type { Owned } from '../items/owned.ts';
import { OrderedForm } from './OrderedForm.tsx';
import { OrderLine } from './OrderLine.tsx';
import styles from './Orders.module.css';
import { partsOf } from './parts-of.ts';

type OrdersProps = { owned: Owned; item: ItemView };

/** The parts of an item: what is to be ordered by when, what is on its way, what is on the shelf. */
export function Orders({ owned, item: { id, item } }: OrdersProps) {
  const { garage, analysis, orders } = owned;
  const own = orders.filter(({ itemId }) => itemId === id);
  const result = analysis?.items.find((one) => one.id === id) ?? null;
  const said = partsOf({
    item,
    orders: own.map(({ order }) => order),
    result,
    today: garage.today,
  });
  const stands = (each: (typeof own)[number]) => orderStands(each.order, result?.service ?? null);
  const newestFirst = own.toSorted((a, b) => (a.order.on < b.order.on ? 1 : -1));
  return (
    <div className={styles.orders}>
      <FormSection title="Parts">
        <Said said={said} />
        {own.length > 0 ? (
          <ul className={styles.list}>
            {newestFirst.map((each) => (
              <OrderLine key={each.orderId} standing={each} stands={stands(each)} owned={owned} />
            ))}
          </ul>
        ) : null}
        <OrderedForm owned={owned} itemId={id} leadDays={item.leadDays} />
      </FormSection>
    </div>
  );
}

/** What the orders themselves do not say. */
function Said({ said }: { said: ReturnType<typeof partsOf> }) {
  if (!said) return <p>No parts are ordered.</p>;
  const { by, words } = said;
  if (by.kind === 'orderBy') return <p>{capital(`${words}.`)}</p>;
  return by.kind === 'ordered' && by.late ? <p>They arrive after it is likely due.</p> : null;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
