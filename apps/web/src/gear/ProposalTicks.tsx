'use client';

import { limitsWords } from '@quartermark/engine/display';
import type { Proposal } from '@quartermark/engine/library';
import { DateField, TextField, Tick } from '../components/index.ts';
import { FormPair, FormSection } from '../forms/Form.tsx';
import styles from './ProposalTicks.module.css';
import { JUST_TICKED, type Ticked, type Ticks } from './proposal-ticks.ts';

type ProposalTicksProps = {
  proposals: readonly Proposal[];
  ticks: Ticks;
  errors: Record<string, string>;
  onChange: (ticks: Ticks) => void;
};

/** What such a thing is usually watched by, to be ticked; each with its limits and whose they are. */
export function ProposalTicks({ proposals, ticks, errors, onChange }: ProposalTicksProps) {
  if (proposals.length === 0) return null;
  const set = (key: string, ticked: Ticked | null) => {
    const { [key]: _, ...others } = ticks;
    onChange(ticked === null ? others : { ...others, [key]: ticked });
  };
  return (
    <FormSection title="What to watch">
      <p>Tick what is to be watched. More can be added later, and each can be changed.</p>
      <ul className={styles.list}>
        {proposals.map((proposal) => (
          <li key={proposal.key} className={styles.row}>
            <Tick
              label={proposal.item.name}
              hint={`${valueWords(proposal)} ${proposal.why}`}
              checked={ticks[proposal.key] !== undefined}
              onChange={(on) => set(proposal.key, on ? JUST_TICKED : null)}
            />
            <More
              proposal={proposal}
              ticked={ticks[proposal.key] ?? null}
              errors={errors}
              onChange={(ticked) => set(proposal.key, ticked)}
            />
          </li>
        ))}
      </ul>
    </FormSection>
  );
}

function valueWords(proposal: Proposal): string {
  if (proposal.askManual)
    return proposal.ask === 'label' ? 'A date on its label.' : 'By its maker’s value.';
  const { source, limits } = proposal.item;
  return `${limitsWords(limits)}. ${source ? `Source: ${source}.` : 'Unverified.'}`;
}

type MoreProps = {
  proposal: Proposal;
  ticked: Ticked | null;
  errors: Record<string, string>;
  onChange: (ticked: Ticked) => void;
};

function More({ proposal, ticked, errors, onChange }: MoreProps) {
  if (ticked === null) return null;
  const { key, item } = proposal;
  const change = (more: Partial<Ticked>) => onChange({ ...ticked, ...more });
  if (proposal.askManual && proposal.ask === 'label')
    return (
      <DateField
        label={`${item.name}: the label says`}
        value={ticked.label}
        error={errors[`${key}.label`]}
        onChange={(event) => change({ label: event.currentTarget.value })}
      />
    );
  const last = (
    <DateField
      label={`${item.name}: last done on`}
      hint="Left empty, it is not on record."
      optional
      value={ticked.lastDone}
      error={errors[`${key}.lastDone`]}
      onChange={(event) => change({ lastDone: event.currentTarget.value })}
    />
  );
  // a day on a label needs no service
  if (!proposal.askManual) return item.limits.every(isDate) ? null : last;
  return (
    <>
      <FormPair>
        <TextField
          label={`${item.name}: at most`}
          hint="One of the two is enough."
          suffix="h"
          figures
          inputMode="decimal"
          autoComplete="off"
          value={ticked.hours}
          error={errors[`${key}.hours`]}
          onChange={(event) => change({ hours: event.currentTarget.value })}
        />
        <TextField
          label={`${item.name}: or at most`}
          suffix="months"
          figures
          inputMode="numeric"
          autoComplete="off"
          value={ticked.months}
          error={errors[`${key}.months`]}
          onChange={(event) => change({ months: event.currentTarget.value })}
        />
      </FormPair>
      {last}
    </>
  );
}

const isDate = ({ measure }: { measure: string }) => measure === 'date';
