'use client';

import { Button, Notice } from '../components/index.ts';
import { questionOf } from '../record/asked.ts';
import { Questions } from '../record/Questions.tsx';
import type { CarDebriefProps } from './car-debrief-props.ts';
import type { Part } from './debrief-parts.ts';

type PartFootProps = Pick<CarDebriefProps, 'read' | 'troubles' | 'busy' | 'onAgain'> & {
  partKey: string;
};

/** What the server said of a line instead of saving it, with the ways out of it. */
export function PartFoot({ partKey: key, read, troubles, busy, onAgain }: PartFootProps) {
  const trouble = troubles[key];
  const part = read.parts.find((one) => one.key === key);
  if (!trouble || !part) return null;
  const question = questionOf(trouble);
  if (question)
    return (
      <Questions
        {...{ trouble, question, busy }}
        kind={part.entry.kind}
        onAsWritten={() => onAgain(part)}
        onOrder={(dayOrder) => onAgain(ordered(part, dayOrder))}
      />
    );
  return (
    <Notice
      tone="alarm"
      title="Not saved."
      actions={
        <Button busy={busy} onClick={() => onAgain(part)}>
          Try this line again
        </Button>
      }
    >
      {trouble.message}
    </Notice>
  );
}

/** The same line with its place in the day said. */
function ordered({ key, entry }: Part, dayOrder: 'beforeDriving' | 'afterDriving'): Part {
  return { key, entry: { ...entry, dayOrder } };
}
