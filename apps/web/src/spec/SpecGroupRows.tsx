'use client';

import type { SpecGroup } from '@quartermark/engine/log';
import { type UseFormReturn, useFieldArray, useWatch } from 'react-hook-form';
import { Button, TextField } from '../components/index.ts';
import { FormSection } from '../forms/Form.tsx';
import styles from './SpecGroupRows.module.css';
import { emptyRow, type SpecFields } from './spec-fields.ts';
import { GROUP_NAME } from './spec-words.ts';

/** What such a line may say, as a hint in an empty one. */
const SUCH_AS: Readonly<Record<SpecGroup, { what: string; value: string }>> = {
  fluids: { what: 'Engine oil with filter', value: '5.5 L of 5W-40' },
  torques: { what: 'Wheel bolts, cold', value: '120 N·m, star order' },
  pressures: { what: 'Road, cold', value: '2.2 bar front, 2.4 bar rear' },
  jacking: { what: 'Front', value: 'pads inboard of the sills' },
  other: { what: 'Wheel bearing grease', value: 'as the manual says' },
};

type SpecGroupRowsProps = {
  form: UseFormReturn<SpecFields>;
  group: SpecGroup;
  errors: Record<string, string>;
  /** lines moved: what was wrong no longer stands where it was said */
  onMoved: () => void;
};

/** The lines of one group of the sheet: added, taken away, put in another order. */
export function SpecGroupRows({ form, group, errors, onMoved }: SpecGroupRowsProps) {
  const { fields, append, remove, swap } = useFieldArray({ control: form.control, name: group });
  const moved = (move: () => void) => () => {
    move();
    onMoved();
  };
  return (
    <FormSection title={GROUP_NAME[group]}>
      {fields.length === 0 ? <p className={styles.none}>No line yet.</p> : null}
      {fields.map((field, at) => (
        <fieldset key={field.id} className={styles.row}>
          <legend className={styles.unseen}>
            {GROUP_NAME[group]}, line {at + 1}
          </legend>
          <RowFields form={form} group={group} at={at} errors={errors} />
          <RowPresses
            form={form}
            group={group}
            at={at}
            last={at === fields.length - 1}
            onUp={moved(() => swap(at, at - 1))}
            onDown={moved(() => swap(at, at + 1))}
            onAway={moved(() => remove(at))}
          />
        </fieldset>
      ))}
      <div>
        <Button
          aria-label={`Add a line: ${GROUP_NAME[group].toLowerCase()}`}
          onClick={() => append(emptyRow())}
        >
          Add a line
        </Button>
      </div>
    </FormSection>
  );
}

type RowProps = { form: UseFormReturn<SpecFields>; group: SpecGroup; at: number };

function RowFields({ form, group, at, errors }: RowProps & { errors: Record<string, string> }) {
  const path = `${group}.${at}` as const;
  return (
    <div className={styles.fields}>
      <TextField
        label="What"
        autoComplete="off"
        placeholder={SUCH_AS[group].what}
        error={errors[`${path}.what`]}
        {...form.register(`${path}.what`)}
      />
      <TextField
        label="Value, with its unit"
        autoComplete="off"
        placeholder={SUCH_AS[group].value}
        error={errors[`${path}.value`]}
        {...form.register(`${path}.value`)}
      />
      <TextField
        label="Source"
        optional
        autoComplete="off"
        placeholder="manual, page"
        error={errors[`${path}.source`]}
        {...form.register(`${path}.source`)}
      />
    </div>
  );
}

type RowPressesProps = RowProps & {
  last: boolean;
  onUp: () => void;
  onDown: () => void;
  onAway: () => void;
};

function RowPresses({ form, group, at, last, onUp, onDown, onAway }: RowPressesProps) {
  const what = useWatch({ control: form.control, name: `${group}.${at}.what` });
  const name = what?.trim() || `line ${at + 1}`;
  return (
    <div className={styles.presses}>
      {at > 0 ? (
        <Button look="quiet" aria-label={`Up: ${name}`} onClick={onUp}>
          Up
        </Button>
      ) : null}
      {last ? null : (
        <Button look="quiet" aria-label={`Down: ${name}`} onClick={onDown}>
          Down
        </Button>
      )}
      <Button look="quiet" aria-label={`Take away: ${name}`} onClick={onAway}>
        Take away
      </Button>
    </div>
  );
}
