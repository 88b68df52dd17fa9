'use client';

import { limitsWords } from '@quartermark/engine/display';
import type { Proposal } from '@quartermark/engine/library';
import { memo } from 'react';
import { Button, Choice, DateField, TextField } from '../components/index.ts';
import { FormPair } from '../forms/Form.tsx';
import { type Answer, answered, type Standing } from './answer.ts';
import styles from './ProposalRow.module.css';

const OPTIONS: readonly { value: Standing; words: string; hint?: string }[] = [
  { value: 'goodToday', words: 'Seen good today', hint: 'counts from today' },
  { value: 'done', words: 'Done on …', hint: 'a day I know' },
  { value: 'dueNow', words: 'Treat as due now' },
  { value: 'notHere', words: 'Not on this car' },
];

type ProposalRowProps = {
  proposal: Proposal;
  answer: Answer | undefined;
  unit: 'km' | 'mi';
  errors: Record<string, string>;
  onAnswer: (key: string, answer: Answer | null) => void;
};

/** One thing that runs out: whose value it is, and four answers. None is chosen beforehand. */
export const ProposalRow = memo(function ProposalRow({
  proposal,
  answer,
  unit,
  errors,
  onAnswer,
}: ProposalRowProps) {
  const { key, item, why } = proposal;
  const change = (more: Partial<Answer>) => answer && onAnswer(key, { ...answer, ...more });
  return (
    <li className={styles.row}>
      <h3>{item.name}</h3>
      <p className={styles.value}>{valueWords(proposal)}</p>
      <p className={styles.why}>{why}</p>
      <Choice
        label={item.name}
        hideLabel
        options={OPTIONS}
        value={answer?.standing ?? null}
        onChange={(standing) => onAnswer(key, { ...(answer ?? answered(standing)), standing })}
      />
      {answer?.standing === 'done' ? (
        <FormPair>
          <DateField
            label="Done on"
            value={answer.on}
            error={errors[`${key}.on`]}
            onChange={(event) => change({ on: event.currentTarget.value })}
          />
          <TextField
            label="The odometer then"
            optional
            suffix={unit}
            figures
            inputMode="decimal"
            autoComplete="off"
            value={answer.odometer}
            error={errors[`${key}.odometer`]}
            onChange={(event) => change({ odometer: event.currentTarget.value })}
          />
        </FormPair>
      ) : null}
      {answer && answer.standing !== 'notHere' && proposal.askManual ? (
        <Asked proposal={proposal} answer={answer} unit={unit} errors={errors} change={change} />
      ) : null}
      {answer ? (
        <div>
          <Button
            look="quiet"
            aria-label={`Leave open: ${item.name}`}
            onClick={() => onAnswer(key, null)}
          >
            Leave open
          </Button>
        </div>
      ) : null}
    </li>
  );
});

/** The limits and whose they are, or where to look for them. */
function valueWords(proposal: Proposal): string {
  const { item } = proposal;
  if (!proposal.askManual) return `${limitsWords(item.limits)}. ${sourceWords(item.source)}`;
  return proposal.ask === 'label'
    ? 'The date stands on its label.'
    : 'The value stands in the manual.';
}

function sourceWords(source: string | undefined): string {
  return source ? `Source: ${source}.` : 'Unverified.';
}

type AskedProps = {
  proposal: Extract<Proposal, { askManual: true }>;
  answer: Answer;
  unit: 'km' | 'mi';
  errors: Record<string, string>;
  change: (more: Partial<Answer>) => void;
};

function Asked({ proposal: { key, ask }, answer, unit, errors, change }: AskedProps) {
  if (ask === 'label')
    return (
      <DateField
        label="The label says"
        value={answer.label}
        error={errors[`${key}.label`]}
        onChange={(event) => change({ label: event.currentTarget.value })}
      />
    );
  return (
    <FormPair>
      <TextField
        label="The manual says, at most"
        hint="One of the two is enough."
        suffix={unit}
        figures
        inputMode="decimal"
        autoComplete="off"
        value={answer.distance}
        error={errors[`${key}.distance`]}
        onChange={(event) => change({ distance: event.currentTarget.value })}
      />
      <TextField
        label="Or, at most"
        suffix="months"
        figures
        inputMode="numeric"
        autoComplete="off"
        value={answer.months}
        error={errors[`${key}.months`]}
        onChange={(event) => change({ months: event.currentTarget.value })}
      />
    </FormPair>
  );
}
