'use client';

import { useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import Link from 'next/link';
import { useTRPC } from '../../client/trpc.ts';
import { PageAnswer } from '../../components/index.ts';
import { PutOffForm } from './PutOffForm.tsx';
import { PutOffList } from './PutOffList.tsx';

type PutOffScreenProps = {
  garageId: string;
  /** ids of the facts that the address names */
  facts: readonly string[];
  /** the last day without a word of them, as the address proposes it */
  until: string | null;
};

/** What letters shall not speak of for a while: what is proposed, and what is put off already. */
export function PutOffScreen({ garageId, facts, until }: PutOffScreenProps) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.putOff.list.queryOptions({ garageId }));
  // what is over is spoken of again
  const rows = data.rows.filter(({ until: last }) => last >= data.garage.today);
  const waiting = rows.length;
  return (
    <>
      <PageAnswer
        about="Put off"
        beneath={<Link href={`/g/${garageId}/letters` as Route}>All letters</Link>}
      >
        {facts.length > 0
          ? 'Until when shall letters not speak of this?'
          : waiting === 0
            ? 'Nothing is put off.'
            : `${waiting === 1 ? 'One thing is' : `${waiting} things are`} put off.`}
      </PageAnswer>
      {facts.length > 0 ? <PutOffForm garage={data.garage} facts={facts} until={until} /> : null}
      <PutOffList garage={data.garage} rows={rows} />
    </>
  );
}
