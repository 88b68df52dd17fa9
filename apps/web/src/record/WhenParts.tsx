'use client';

import type { LastValues } from '@quartermark/api/client';
import { formatDay, typedWords } from '@quartermark/engine/display';
import { useWatch } from 'react-hook-form';
import { DateField, NoteField, SelectField, TextField } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { FormPair } from '../forms/Form.tsx';
import { orderWords } from './day-words.ts';
import { DISTANCE_UNITS, type PartProps } from './parts.ts';
import { Quantity } from './Quantity.tsx';
import type { RecordFields } from './record-fields.ts';
import { type FormKind, isUse } from './record-kinds.ts';

type OdometerProps = PartProps & { kind: FormKind; last: LastValues['odometer'] };

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
      hint={driven(kind) ? `At the end. ${shown}` : shown}
      optional={kind !== 'odometer'}
      units={DISTANCE_UNITS}
    />
  );
}

type WhenProps = PartProps & { kind: FormKind; today: string; unfolded: boolean };

/** When it was, who drove, and a note: what today's entry can mostly do without. */
export function When({ form, errors, kind, today, unfolded }: WhenProps) {
  const [on, time, dayOrder, note] = useWatch({
    control: form.control,
    name: ['on', 'time', 'dayOrder', 'note'],
  });
  const wrong = ['on', 'time', 'dayOrder', 'driver', 'note'].some(
    (name) => errors[`entry.${name}`],
  );
  const ordered = time === '' && (dayOrder !== '' || !driven(kind));
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
      {driven(kind) ? (
        <TextField
          label="Driven by"
          optional
          autoComplete="off"
          error={errors['entry.driver']}
          {...form.register('driver')}
        />
      ) : null}
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

const driven = (kind: FormKind) => kind !== 'other' && isUse(kind);

function orderOptions(kind: FormKind) {
  const said = (order: 'beforeDriving' | 'afterDriving') => {
    const words = orderWords(kind === 'other' ? 'note' : kind, order);
    return { value: order, words: words.charAt(0).toUpperCase() + words.slice(1) };
  };
  return [{ value: '', words: 'Not said' }, said('beforeDriving'), said('afterDriving')];
}

type Said = Pick<RecordFields, 'on' | 'time' | 'note'>;

function nowWords({ on, time, note }: Said, today: string, kind: FormKind): string {
  const day = on === today ? 'today' : /^\d{4}-\d{2}-\d{2}$/.test(on) ? formatDay(on) : 'no day';
  const parts = [day, time, note !== '' && kind !== 'note' && 'with a note'];
  return parts.filter(Boolean).join(', ');
}
