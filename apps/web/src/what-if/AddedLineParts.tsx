import { EVENT_SORTS, type EventSort, type UseMeasure } from '@quartermark/engine/log';
import type { UseFormReturn } from 'react-hook-form';
import { Button, DateField, QuantityField, SelectField, TextField } from '../components/index.ts';
import { EVENT_NAME } from '../event/event-words.ts';
import { shownAmount } from '../event/planned-use-fields.ts';
import styles from './AddedLines.module.css';
import { type AddedFields, type AddedLine, measuresOf } from './added-fields.ts';

const SORTS = EVENT_SORTS.map((value) => ({ value, words: EVENT_NAME[value] }));
const UNITS = [
  { value: 'km', words: 'km' },
  { value: 'mi', words: 'miles' },
] as const;

const LABEL: Readonly<Record<UseMeasure, string>> = {
  sessions: 'Sessions',
  launches: 'Launches',
  distance: 'Distance',
  hours: 'Hours',
};

type AddedLineProps = {
  form: UseFormReturn<AddedFields>;
  at: number;
  line: AddedLine;
  /** civil date of the garage */
  today: string;
  errors: Record<string, string>;
  /** absent for the only line */
  onRemove: (() => void) | undefined;
};

/** One thing the car might do: what, on which days, and how much of it, all days together. */
export function AddedLineParts({ form, at, line, today, errors, onRemove }: AddedLineProps) {
  const path = `lines.${at}` as const;
  const error = (field: string) => errors[`added.${at}.${field}`];
  return (
    <fieldset className={styles.line}>
      <legend>Line {at + 1}</legend>
      <SelectField
        label="What"
        options={SORTS}
        value={line.sort}
        name={`${path}.sort`}
        onChange={({ currentTarget }) =>
          form.setValue(`${path}.sort`, currentTarget.value as EventSort, { shouldDirty: true })
        }
      />
      <DateField
        label="Day"
        min={today}
        error={error('start')}
        {...form.register(`${path}.start`)}
      />
      <DateField
        label="Last day"
        optional
        min={line.start || today}
        error={error('end')}
        {...form.register(`${path}.end`)}
      />
      {measuresOf(line).map((measure, place) => (
        <Amount
          key={measure}
          form={form}
          at={at}
          line={line}
          measure={measure}
          optional={place > 0}
          error={error(`use.${measure}.text`) ?? error(`use.${measure}`)}
        />
      ))}
      {onRemove ? (
        <Button look="quiet" onClick={onRemove} className={styles.remove}>
          Take line {at + 1} away
        </Button>
      ) : null}
    </fieldset>
  );
}

type AmountProps = Pick<AddedLineProps, 'form' | 'at' | 'line'> & {
  measure: UseMeasure;
  optional: boolean;
  error: string | undefined;
};

function Amount({ form, at, line, measure, optional, error }: AmountProps) {
  const text = shownAmount(line, measure);
  const name = `lines.${at}.use.${measure}` as const;
  const set = (typed: string) => form.setValue(name, typed, { shouldDirty: true });
  const said = { label: LABEL[measure], optional, error };
  if (measure === 'distance')
    return (
      <QuantityField
        {...said}
        name={name}
        units={UNITS}
        value={{ text, unit: line.use.unit }}
        onChange={(typed) => {
          if (typed.text !== text) set(typed.text);
          form.setValue(`lines.${at}.use.unit`, typed.unit, { shouldDirty: true });
        }}
      />
    );
  return (
    <TextField
      {...said}
      name={name}
      figures
      inputMode="decimal"
      autoComplete="off"
      value={text}
      onChange={({ currentTarget }) => set(currentTarget.value)}
    />
  );
}
