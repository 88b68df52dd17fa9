'use client';

import { useInfiniteQuery, useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { useTRPC } from '../../client/trpc.ts';
import { useCommand } from '../../client/use-command.ts';
import { Button, Notice } from '../../components/index.ts';
import { FormSection } from '../../forms/Form.tsx';
import { letterPages } from '../letter-pages.ts';
import { MailLine } from '../MailLine.tsx';

const ASK_AGAIN_MS = 2000;

type TestLetterProps = {
  garageId: string;
  /** null: a letter can leave */
  reason: string | null;
  /** the mailbox of whoever presses */
  to: string;
  zone: string;
};

/** A letter to oneself that says nothing but that it arrived; how it goes is followed here. */
export function TestLetter({ garageId, reason, to, zone }: TestLetterProps) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const [sentId, setSentId] = useState<string | null>(null);
  const test = useCommand(garageId, useMutation(trpc.post.test.mutationOptions()).mutateAsync);
  const { data } = useInfiniteQuery({
    ...trpc.letter.sent.infiniteQueryOptions({ garageId }, letterPages),
    enabled: sentId !== null,
    refetchInterval: (query) =>
      stateOf(query.state.data, sentId)?.mail.state === 'waiting' ? ASK_AGAIN_MS : false,
  });
  const row = stateOf(data, sentId);

  async function press() {
    const written = await test.send({});
    if (!written) return;
    setSentId(written.id);
    await client.invalidateQueries({ queryKey: trpc.letter.sent.pathKey() });
  }

  return (
    <FormSection title="Test letter">
      <p>It goes to {to} as the saved settings say, and says nothing but that it arrived.</p>
      <div>
        <Button reason={reason} busy={test.busy} busyWords="Writing it …" onClick={press}>
          Send a test letter
        </Button>
      </div>
      {test.trouble ? <Notice tone="alarm">{test.trouble.message}</Notice> : null}
      <div aria-live="polite">{row ? <MailLine mail={row.mail} zone={zone} /> : null}</div>
    </FormSection>
  );
}

type Sent = { pages: readonly { rows: readonly SentRow[] }[] } | undefined;
type SentRow = { deliveryId: string; mail: Parameters<typeof MailLine>[0]['mail'] };

const stateOf = (sent: Sent, id: string | null) =>
  sent?.pages.flatMap(({ rows }) => rows).find(({ deliveryId }) => deliveryId === id);
