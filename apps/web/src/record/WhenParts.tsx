'use client';

import type { LastValues } from '@quartermark/api/client';
import { formatDay, typedWords } from '@quartermark/engine/display';
import type { EntryKind } from '@quartermark/engine/log';
import { useId } from 'react';
import { useWatch } from 'react-hook-form';
import { DateField, NoteField, SelectField, TextField } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import { orderWords } from './day-words.ts';
import { DISTANCE_UNITS, type PartProps } from './parts.ts';
import { Quantity } from './Quantity.tsx';
import type { RecordFields } from './record-fields.ts';
import { isUse } from './record-kinds.ts';

type OdometerProps = PartProps & { kind: EntryKind; last: LastValues['odometer'] };

/** What the odometer showed: the whole of an odometer entry, beside any other a help. */
export function Odometer({ form, errors, kind, last }: OdometerProps) {
  const shown = last ? `Last: ${typedWords(last)}, ${formatDay(last.on)}.` : '';
  return (
    <Quantity
      form={form}
      errors={errors}
      name="odometer"
      path="odometer"
      label="Odometer"
      hint={isUse(kind) ? `At the end. ${shown}` : shown}
      optional={kind !== 'odometer'}
      units={DISTANCE_UNITS}
    />
  );
}

type WhenProps = PartProps & {
  kind: EntryKind;
  today: string;
  unfolded: boolean;
  /** who is known to drive */
  people: readonly string[];
};

/** When it was, who drove, and a note: what today's entry can mostly do without. */
export function When({ form, errors, kind, today, unfolded, people }: WhenProps) {
  const [on, time, dayOrder, note] = useWatch({
    control: form.control,
    name: ['on', 'time', 'dayOrder', 'note'],
  });
  const wrong = ['on', 'time', 'dayOrder', 'driver', 'note'].some(
    (name) => errors[`entry.${name}`],
  );
  const ordered = time === '' && (dayOrder !== '' || !isUse(kind));
  return (
    <Fold
      title={kind === 'note' ? 'Day and time' : 'Day, time and note'}
      now={nowWords({ on, time, note }, today, kind)}
      wrong={wrong}
      unfolded={unfolded}
    >
      <FormPair>
        <DateField label="Day" error={errors['entry.on']} {...form.register('on')} />
        <TextField
          label="Time of day"
          optional
          type="time"
          figures
          error={errors['entry.time']}
          {...form.register('time')}
        />
      </FormPair>
      {ordered ? (
        <SelectField
          label="Or its place in that day"
          options={orderOptions(kind)}
          error={errors['entry.dayOrder']}
          {...form.register('dayOrder')}
        />
      ) : null}
      {hasDriver(kind) ? <Driver form={form} errors={errors} people={people} /> : null}
      {kind === 'note' ? null : (
        <NoteField
          label="Note"
          optional
          rows={3}
          error={errors['entry.note']}
          {...form.register('note')}
        />
      )}
    </Fold>
  );
}

type DriverProps = PartProps & { people: readonly string[] };

/** Who drove: one of those who are known, or any other name. */
function Driver({ form, errors, people }: DriverProps) {
  const list = useId();
  return (
    <>
      <TextField
        label="Driven by"
        optional
        autoComplete="off"
        list={list}
        error={errors['entry.driver']}
        {...form.register('driver')}
      />
      <datalist id={list}>
        {people.map((name) => (
          <option key={name} value={name} />
        ))}
      </datalist>
    </>
  );
}

/** An incident has somebody at the wheel, though it drives nothing. */
const hasDriver = (kind: EntryKind) => isUse(kind) || kind === 'incident';

function orderOptions(kind: EntryKind) {
  const said = (order: 'beforeDriving' | 'afterDriving') => {
    const words = orderWords(kind, order);
    return { value: order, words: words.charAt(0).toUpperCase() + words.slice(1) };
  };
  return [{ value: '', words: 'Not said' }, said('beforeDriving'), said('afterDriving')];
}

type Said = Pick<RecordFields, 'on' | 'time' | 'note'>;

function nowWords({ on, time, note }: Said, today: string, kind: EntryKind): string {
  const day = on === today ? 'today' : /^\d{4}-\d{2}-\d{2}$/.test(on) ? formatDay(on) : 'no day';
  const parts = [day, time, note !== '' && kind !== 'note' && 'with a note'];
  return parts.filter(Boolean).join(', ');
}
