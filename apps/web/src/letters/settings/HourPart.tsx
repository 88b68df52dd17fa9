import { TextField } from '../../components/index.ts';
import { FormSection } from '../../forms/Form.tsx';
import type { PostPartProps } from './post-part-props.ts';

/** When everybody's letters leave. */
export function HourPart({ form, errors, zone }: PostPartProps & { zone: string }) {
  return (
    <FormSection title="The garage’s hour">
      <TextField
        label="Letters leave at"
        hint={`By the clocks of ${zone}, for everybody. They are written after midnight, with what is known then.`}
        type="time"
        figures
        error={errors.sendMinute}
        {...form.register('hour')}
      />
    </FormSection>
  );
}
