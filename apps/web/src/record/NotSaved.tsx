'use client';

import type { EntryKind } from '@quartermark/engine/log';
import type { ComponentProps } from 'react';
import { Button, Notice } from '../components/index.ts';
import { isElsewhere, questionOf } from './asked.ts';
import { Meanwhile } from './Meanwhile.tsx';
import { Questions } from './Questions.tsx';

type NotSavedProps = Omit<ComponentProps<typeof Questions>, 'question'> &
  ComponentProps<typeof Meanwhile> & {
    kind: EntryKind;
    onMoved: () => void | Promise<void>;
  };

/** What the server said instead of saving, with every way out of it. */
export function NotSaved({ onAsWritten, onOrder, onMoved, ...ways }: NotSavedProps) {
  const { trouble, kind, busy } = ways;
  const question = questionOf(trouble);
  if (question) return <Questions {...{ trouble, question, kind, busy, onAsWritten, onOrder }} />;
  if (isElsewhere(trouble))
    return (
      <Notice
        tone="alarm"
        title="Not saved yet: it is still on elsewhere."
        actions={
          <Button busy={busy} onClick={onMoved}>
            Record it as moved here
          </Button>
        }
      >
        {trouble.message}
      </Notice>
    );
  return <Meanwhile {...ways} />;
}
