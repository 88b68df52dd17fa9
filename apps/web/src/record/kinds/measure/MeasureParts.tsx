'use client';

import { useWatch } from 'react-hook-form';
import { Notice, TextField } from '../../../components/index.ts';
import { Fold } from '../../../forms/Fold.tsx';
import { FormPair } from '../../../forms/Form.tsx';
import { partOf } from '../../about.ts';
import { CornerQuantities } from '../../CornerQuantities.tsx';
import { PartChoice } from '../../PartChoice.tsx';
import {
  type AboutProps,
  errorWithin,
  NUMBER,
  type PartProps,
  PRESSURE_UNITS,
} from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';
import { Discs } from './Discs.tsx';
import { Pads } from './Pads.tsx';
import { NO_READING } from './read.ts';
import { readCounts } from './read-counts.ts';
import { Tread } from './Tread.tsx';

/** Everything that can be measured, folded by what it is of; any of it may stay empty. */
export function MeasureParts({ form, errors, about }: AboutProps) {
  const rows = { form, errors };
  const nothing = errors[`entry.${NO_READING}`];
  const [component, measure] = useWatch({
    control: form.control,
    name: ['measure.component', 'measure'],
  });
  const sort = partOf(about, component)?.sort;
  const counts = readCounts(measure);
  /** Open from the start where something stands, or where the chosen part is measured. */
  const fold = (of: keyof typeof counts, ...sorts: readonly string[]) => ({
    now: counts[of] > 0 ? `${counts[of]} read` : undefined,
    unfolded: counts[of] > 0 || (sort !== undefined && sorts.includes(sort)),
  });
  return (
    <>
      <PartChoice
        {...rows}
        about={about}
        name="measure.component"
        path="component"
        label="Of which set or part"
        none="Of the car itself"
        optional
      />
      {nothing ? <Notice tone="alarm">{nothing}</Notice> : null}
      <Fold
        title="Tyres"
        {...fold('tyres', 'tyreSet', 'wheelSet')}
        wrong={wrong(errors, 'tread', 'dateCode', 'cracks')}
      >
        <Tread {...rows} />
        <FormPair>
          <TextField
            label="Date code"
            hint="Four digits on the wall: week and year, such as 1423."
            optional
            autoComplete="off"
            error={errors['entry.dateCode']}
            {...form.register('measure.dateCode')}
          />
          <TextField
            label="Cracks or damage"
            optional
            autoComplete="off"
            error={errors['entry.cracks']}
            {...form.register('measure.cracks')}
          />
        </FormPair>
      </Fold>
      <Fold title="Tyre pressures" {...fold('pressures')} wrong={wrong(errors, 'pressures')}>
        <CornerQuantities
          {...rows}
          name="measure.pressures"
          path="pressures"
          label="Tyre pressures"
          units={PRESSURE_UNITS}
        />
      </Fold>
      <Fold title="Brake pads" {...fold('pads', 'pads')} wrong={wrong(errors, 'pads')}>
        <Pads {...rows} />
      </Fold>
      <Fold title="Brake discs" {...fold('discs', 'discs')} wrong={wrong(errors, 'discs')}>
        <Discs {...rows} />
      </Fold>
      <Rest {...rows} {...fold('rest')} />
    </>
  );
}

const wrong = (errors: PartProps['errors'], ...paths: string[]) =>
  errorWithin(errors, ...paths) !== undefined;

function Rest({
  form,
  errors,
  ...fold
}: PartProps & { now: string | undefined; unfolded: boolean }) {
  const rows = { form, errors };
  const paths = ['batteryV', 'brakeFluidTest', 'oilPressureHotIdle', 'oilPressureAtRpm'];
  return (
    <Fold title="Battery, brake fluid, oil pressure" {...fold} wrong={wrong(errors, ...paths)}>
      <FormPair>
        <TextField
          label="Battery"
          optional
          suffix="V"
          {...NUMBER}
          error={errors['entry.batteryV']}
          {...form.register('measure.batteryV')}
        />
        <TextField
          label="Brake fluid test"
          hint="As the tester says it, such as 1 % water or 205 °C."
          optional
          autoComplete="off"
          error={errors['entry.brakeFluidTest']}
          {...form.register('measure.brakeFluidTest')}
        />
      </FormPair>
      <Quantity
        {...rows}
        name="measure.oilPressureHotIdle"
        path="oilPressureHotIdle"
        label="Oil pressure, hot at idle"
        optional
        units={PRESSURE_UNITS}
      />
      <FormPair>
        <Quantity
          {...rows}
          name="measure.oilPressureAtRpm.pressure"
          path="oilPressureAtRpm.pressure"
          label="Oil pressure at speed"
          optional
          units={PRESSURE_UNITS}
        />
        <TextField
          label="Read at"
          optional
          suffix="rpm"
          {...NUMBER}
          error={errors['entry.oilPressureAtRpm.rpm']}
          {...form.register('measure.oilPressureAtRpm.rpm')}
        />
      </FormPair>
    </Fold>
  );
}
