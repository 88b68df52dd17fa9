'use client';

import { useQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../client/trpc.ts';
import styles from './GarageNav.module.css';

type LettersWayProps = {
  garageId: string;
  here: string;
  /** as the server knows it; null: it could not be asked */
  unread: number | null;
};

/** The way to the letters, with how many are not read. */
export function LettersWay({ garageId, here, unread }: LettersWayProps) {
  const trpc = useTRPC();
  const { data } = useQuery({
    ...trpc.letter.unread.queryOptions({ garageId }),
    ...(unread === null ? {} : { initialData: { count: unread } }),
  });
  const href = `/g/${garageId}/letters` as Route;
  const count = data?.count ?? 0;
  return (
    <Link href={href} aria-current={here === href ? 'page' : undefined} className={styles.way}>
      Letters
      {count === 0 ? null : <strong>, {count} unread</strong>}
    </Link>
  );
}
