'use client';

import type { EntryKind } from '@quartermark/engine/log';
import type { Trouble } from '../client/refusal-words.ts';
import { Button, Notice } from '../components/index.ts';
import type { Question } from './asked.ts';
import { orderWords } from './day-words.ts';
import { isUse } from './record-kinds.ts';

type QuestionsProps = {
  trouble: Trouble;
  question: Question;
  kind: EntryKind;
  busy: boolean;
  onAsWritten: () => void | Promise<void>;
  onOrder: (order: 'beforeDriving' | 'afterDriving') => void | Promise<void>;
};

/** What only the person can know, asked once; nothing is saved until it is answered or mended. */
export function Questions({ trouble, question, kind, busy, onAsWritten, onOrder }: QuestionsProps) {
  const { message } = trouble;
  const said = message.charAt(0).toUpperCase() + message.slice(1);
  if (question === 'odometerBackwards')
    return (
      <Notice
        tone="alarm"
        title="Not saved yet: is the odometer right?"
        actions={
          <Button busy={busy} onClick={onAsWritten}>
            Save it as typed
          </Button>
        }
      >
        {said}
      </Notice>
    );
  if (question === 'looksTheSame')
    return (
      <Notice
        tone="alarm"
        title="Not saved yet: is it on record already?"
        actions={
          <Button busy={busy} onClick={onAsWritten}>
            It happened twice, save both
          </Button>
        }
      >
        {said}
      </Notice>
    );
  const use = isUse(kind);
  const order = (which: 'beforeDriving' | 'afterDriving') => {
    const words = orderWords(kind, which);
    return words.charAt(0).toUpperCase() + words.slice(1);
  };
  return (
    <Notice
      tone="alarm"
      title="Not saved yet: which came first?"
      actions={
        <>
          <Button busy={busy} onClick={() => onOrder('beforeDriving')}>
            {order('beforeDriving')}
          </Button>
          <Button busy={busy} onClick={() => onOrder('afterDriving')}>
            {order('afterDriving')}
          </Button>
          <Button busy={busy} onClick={onAsWritten}>
            Not known, save it as written
          </Button>
        </>
      }
    >
      {use
        ? 'The car was also worked on that day, and neither has a time. Was this driving before that work or after it? Only driving after it counts against what was renewed.'
        : 'The car was also driven that day, and neither has a time. Was this before that driving or after it? Only driving after it counts against what was renewed.'}
    </Notice>
  );
}
