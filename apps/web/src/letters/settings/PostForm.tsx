'use client';

import type { PostView } from '@quartermark/api/client';
import { useMutation, useQueryClient, useSuspenseQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { useRef, useState } from 'react';
import { useTRPC } from '../../client/trpc.ts';
import { ChangeForm } from '../../forms/ChangeForm.tsx';
import { type SentOn, useChange } from '../../forms/use-change.tsx';
import { HookParts } from './HookParts.tsx';
import { HookSecret } from './HookSecret.tsx';
import { HourPart } from './HourPart.tsx';
import { MailServerParts } from './MailServerParts.tsx';
import {
  canGoBack,
  type PostBody,
  postBody,
  postFields,
  postLines,
  postSchema,
  readPost,
} from './post-fields.ts';
import { useSaved } from './use-saved.ts';

/** The garage's hour, its mail server and its webhook, for owner and admin. */
export function PostForm({ garageId }: { garageId: string }) {
  const trpc = useTRPC();
  const { data } = useSuspenseQuery(trpc.post.view.queryOptions({ garageId }));
  const [secret, setSecret] = useState<string | null>(null);
  return (
    <>
      <Opened key={data.revision} view={data} onSecret={setSecret} />
      {/* where the eye is: below the press that made it */}
      <div aria-live="polite">
        {secret === null ? null : <HookSecret secret={secret} onDone={() => setSecret(null)} />}
      </div>
    </>
  );
}

type OpenedProps = { view: PostView; onSecret: (secret: string) => void };

function Opened({ view, onSecret }: OpenedProps) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const router = useRouter();
  const [opened] = useState(view);
  const [password, setPassword] = useState('');
  const { garage, revision, sendMinute, mail, hasPassword, hookUrl } = opened;
  const body = postBody({ sendMinute, mail, hasPassword, hookUrl });
  const { mutateAsync } = useMutation(trpc.post.change.mutationOptions());
  const saved = useSaved();

  // whether what was sent last can be put back
  const sentBack = useRef(true);

  async function send(next: PostBody, on: SentOn) {
    const { sendMinute, mail, password, hook } = next;
    sentBack.current = canGoBack(body, next);
    const written = await mutateAsync({ ...on, sendMinute, mail, password, hook });
    if (written.hookSecret !== null) onSecret(written.hookSecret);
    return written;
  }

  const change = useChange({
    garage,
    draft: `post:${garage.id}`,
    opened: { body, revision },
    fieldsOf: postFields,
    read: (fields) => readPost(fields, password),
    schema: postSchema,
    lines: postLines,
    send,
    after: (_, undo) =>
      saved('post', sentBack.current ? undo : null, async () => {
        await client.invalidateQueries({ queryKey: trpc.post.pathKey() });
        await client.invalidateQueries({ queryKey: trpc.letter.pathKey() });
      }),
  });
  const parts = { form: change.form, errors: change.errors };
  return (
    <ChangeForm
      label="The garage’s post"
      change={change}
      saveWords="Save the garage’s post"
      onLeave={() => router.push(`/g/${garage.id}/letters` as Route)}
    >
      <HourPart {...parts} zone={garage.zone} />
      <MailServerParts
        {...parts}
        hasPassword={hasPassword}
        password={password}
        onPassword={setPassword}
      />
      <HookParts {...parts} opened={hookUrl} />
    </ChangeForm>
  );
}
