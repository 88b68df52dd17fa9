'use client';

import { oilFitSentences } from '@quartermark/engine/display';
import type { CarProfile } from '@quartermark/engine/log';
import { type UseFormReturn, useWatch } from 'react-hook-form';
import { Notice } from '../components/index.ts';
import type { RecordFields } from './record-fields.ts';

type OilFitProps = {
  form: UseFormReturn<RecordFields>;
  of: 'oilTopUp' | 'oilChange';
  profile: CarProfile;
};

/** What to know of the oil that is written down, beside what the car asks for. It keeps nobody from saving. */
export function OilFit({ form, of, profile }: OilFitProps) {
  const [grade, approval] = useWatch({
    control: form.control,
    name: [`${of}.grade`, `${of}.approval`],
  });
  const asked = { grade: profile.oilGrade, approval: profile.oilApproval };
  const sentences = oilFitSentences(asked, { grade, approval });
  return (
    <div aria-live="polite">
      {sentences.length > 0 ? (
        <Notice tone="caution" title="Not the oil this car asks for?">
          {sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </Notice>
      ) : null}
    </div>
  );
}
