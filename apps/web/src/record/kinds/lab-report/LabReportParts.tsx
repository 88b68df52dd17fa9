'use client';

import { useFieldArray } from 'react-hook-form';
import { Button, TextField } from '../../../components/index.ts';
import { NUMBER, type PartProps } from '../../parts.ts';
import { Row, Rows } from '../../Rows.tsx';
import { NO_FIGURE } from './fields.ts';

export function LabReportParts({ form, errors }: PartProps) {
  const { fields, append, remove } = useFieldArray({
    control: form.control,
    name: 'labReport.figures',
  });
  return (
    <>
      <TextField
        label="Laboratory"
        optional
        autoComplete="off"
        error={errors['entry.laboratory']}
        {...form.register('labReport.laboratory')}
      />
      <Rows
        legend="Figures"
        hint="As they stand on the report: the name with its unit, such as iron, ppm."
        more={<Button onClick={() => append(NO_FIGURE)}>Another figure</Button>}
      >
        {fields.map(({ id }, at) => (
          <Row key={id} of={`figure ${at + 1}`} onRemove={() => remove(at)}>
            <TextField
              label="What"
              autoComplete="off"
              error={errors[`entry.figures.${at}.name`]}
              {...form.register(`labReport.figures.${at}.name`)}
            />
            <TextField
              label="Figure"
              {...NUMBER}
              error={errors[`entry.figures.${at}.value`]}
              {...form.register(`labReport.figures.${at}.value`)}
            />
          </Row>
        ))}
      </Rows>
    </>
  );
}
