import type { EventPage } from '@quartermark/api/client';
import { toOrder, workParts } from '@quartermark/engine/display';
import type { WorkLine } from '@quartermark/engine/readiness';
import styles from './ToOrder.module.css';

const GROUPS = ['today', 'late', 'later', 'coming'] as const;
const TITLE = {
  today: 'Order today',
  late: 'Too late to order for it',
  later: 'Order soon',
  coming: 'Ordered or here',
} as const;

/** Parts for the work: what has to be ordered today before all else. Absent where no parts are needed. */
export function ToOrder({ page }: { page: EventPage }) {
  const asOf = page.garage.today;
  const groupOf = (line: WorkLine) =>
    line.parts === null || line.parts.kind === 'orderBy' ? toOrder(line, asOf) : 'coming';
  return GROUPS.map((group) => {
    const lines = page.work.filter((line) => groupOf(line) === group);
    if (lines.length === 0) return null;
    return (
      <section key={group} aria-label={TITLE[group]} className={styles.group}>
        <h3>{TITLE[group]}</h3>
        <ul>
          {lines.map((line) => (
            <li key={line.id}>
              {page.names[line.car]}: {line.what}. <span>{partsOf(line, asOf)}</span>
            </li>
          ))}
        </ul>
      </section>
    );
  });
}

function partsOf(line: WorkLine, asOf: string): string {
  const words = workParts(line, { asOf }) ?? '';
  return words === '' ? '' : `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}
