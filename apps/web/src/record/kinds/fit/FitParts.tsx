'use client';

import { useController, useWatch } from 'react-hook-form';
import { partOf } from '../../about.ts';
import { ChoiceField } from '../../ChoiceField.tsx';
import { PartChoice } from '../../PartChoice.tsx';
import { type AboutProps, errorWithin } from '../../parts.ts';
import { Ticks } from '../../Ticks.tsx';
import { isBedded, positionRows } from './positions.ts';

const CHANGES = [
  { value: 'on', words: 'Fitted' },
  { value: 'off', words: 'Taken off' },
  { value: 'moved', words: 'Moved', hint: 'Here from elsewhere' },
] as const;
const CONDITIONS = [
  { value: 'new', words: 'New', hint: 'Its life begins here' },
  { value: 'used', words: 'Used' },
] as const;
const BEDDING = [
  { value: 'bedded', words: 'Bedded' },
  { value: 'firstSession', words: 'In the first session' },
  { value: 'notBedded', words: 'Not bedded' },
] as const;

export function FitParts({ form, errors, about }: AboutProps) {
  const rows = { form, errors };
  const [component, change] = useWatch({
    control: form.control,
    name: ['fit.component', 'fit.change'],
  });
  const sort = partOf(about, component)?.sort ?? null;
  return (
    <>
      <PartChoice
        {...rows}
        about={about}
        name="fit.component"
        path="component"
        label="Part"
        none="Choose the part"
      />
      <ChoiceField {...rows} name="fit.change" path="change" label="It was" options={CHANGES} />
      {change === 'off' ? null : (
        <>
          <Positions {...rows} sort={sort} />
          <ChoiceField
            {...rows}
            name="fit.condition"
            path="condition"
            label="It is"
            options={CONDITIONS}
          />
          {isBedded(sort) ? (
            <ChoiceField
              {...rows}
              name="fit.bedding"
              path="bedding"
              label="Run in"
              options={BEDDING}
            />
          ) : null}
        </>
      )}
    </>
  );
}

type PositionsProps = Pick<AboutProps, 'form' | 'errors'> & {
  sort: Parameters<typeof positionRows>[0];
};

function Positions({ form, errors, sort }: PositionsProps) {
  const { field } = useController({ control: form.control, name: 'fit.positions' });
  const positions = positionRows(sort, field.value);
  // a part that has one place only
  if (positions.length === 0) return null;
  return (
    <Ticks
      legend="Where on the car"
      corners
      rows={positions}
      done={field.value}
      onChange={field.onChange}
      error={errorWithin(errors, 'positions')}
    />
  );
}
