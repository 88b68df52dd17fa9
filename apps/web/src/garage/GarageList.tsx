import type { GarageView } from '@quartermark/api/client';
import type { Route } from 'next';
import Link from 'next/link';
import styles from './GarageList.module.css';

export function GarageList({ garages }: { garages: readonly GarageView[] }) {
  return (
    <ul className={styles.list}>
      {garages.map(({ id, name, zone }) => (
        <li key={id}>
          <Link href={`/g/${id}` as Route} className={styles.garage}>
            <strong>{name}</strong>
            <span className={styles.zone}>{zone}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
