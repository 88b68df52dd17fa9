'use client';

import { useMutation, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../../client/trpc.ts';
import { useCommand } from '../../client/use-command.ts';
import { Button, Notice } from '../../components/index.ts';
import { FormSection } from '../../forms/Form.tsx';
import { momentWords } from '../../garage/moment-words.ts';
import { CopyLine } from './CopyLine.tsx';

type PrivateCalendarProps = { garageId: string; zone: string };

/** A member's own address for a calendar program: made, replaced or no longer valid. */
export function PrivateCalendar({ garageId, zone }: PrivateCalendarProps) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const { data } = useSuspenseQuery(trpc.feed.view.queryOptions({ garageId }));
  const [address, setAddress] = useState<string | null>(null);
  const make = useCommand(garageId, useMutation(trpc.feed.make.mutationOptions()).mutateAsync);
  const revoke = useCommand(garageId, useMutation(trpc.feed.revoke.mutationOptions()).mutateAsync);
  const refresh = () => client.invalidateQueries({ queryKey: trpc.feed.pathKey() });

  async function makeOne() {
    revoke.clear();
    const made = await make.send({});
    if (!made) return;
    if (made.path !== null) setAddress(`${globalThis.location.origin}${made.path}`);
    await refresh();
  }

  async function revokeIt() {
    make.clear();
    if (!(await revoke.send({}))) return;
    setAddress(null);
    await refresh();
  }

  const { made } = data;
  const trouble = make.trouble ?? revoke.trouble;
  return (
    <FormSection title="Private calendar">
      <p>
        Due days, looks at the oil, events and lay-ups in a calendar program of yours, which fetches
        them from an address of your own. Whoever has the address sees them: give it to nobody.
      </p>
      <p>
        {made === null
          ? 'You have no calendar address.'
          : `Your address was made on ${momentWords(made, zone)}.`}
      </p>
      {address === null ? null : (
        <Notice title="Your calendar’s address, shown this once">
          <CopyLine what="the address" text={address} />
          <p>
            In your calendar program, add a calendar by its address (often “subscribe”). The program
            must be able to reach this house.
          </p>
        </Notice>
      )}
      <div>
        <Button busy={make.busy} busyWords="Making it …" onClick={makeOne}>
          {made === null ? 'Make a calendar address' : 'Replace the address'}
        </Button>{' '}
        {made === null ? null : (
          <Button busy={revoke.busy} busyWords="Ending it …" onClick={revokeIt}>
            End the address
          </Button>
        )}
      </div>
      {made === null ? null : (
        <p>Replaced or ended, the old address shows nothing from that moment on.</p>
      )}
      {trouble ? <Notice tone="alarm">{trouble.message}</Notice> : null}
    </FormSection>
  );
}
