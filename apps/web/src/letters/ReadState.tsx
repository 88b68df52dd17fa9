'use client';

import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef } from 'react';
import { useTRPC } from '../client/trpc.ts';
import { useCommand } from '../client/use-command.ts';
import { Button, useToast } from '../components/index.ts';
import { ReadMark } from './ReadMark.tsx';
import styles from './ReadState.module.css';

type ReadStateProps = { garageId: string; letterId: string; read: boolean };

/** A letter that lies open counts as read: the page says so once it is alive. A press takes that back. */
export function ReadState({ garageId, letterId, read }: ReadStateProps) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const toast = useToast();
  const { mutateAsync } = useMutation(trpc.letter.markRead.mutationOptions());
  const { send, busy } = useCommand(garageId, mutateAsync, ({ message }) =>
    toast({ id: 'letter-read', words: 'Not marked.', detail: message }),
  );
  const said = useRef(false);

  async function mark(as: boolean) {
    // a press that comes first decides
    said.current = true;
    const written = await send({ letterId, read: as });
    if (written) await client.invalidateQueries({ queryKey: trpc.letter.pathKey() });
  }
  const open = useRef(mark);
  useEffect(() => {
    open.current = mark;
  });
  useEffect(() => {
    if (!read && !said.current) void open.current(true);
  }, [read]);

  return (
    <p className={styles.line}>
      <ReadMark read={read} />
      <Button look="quiet" busy={busy} onClick={() => mark(!read)}>
        {read ? 'Mark as unread' : 'Mark as read'}
      </Button>
    </p>
  );
}
