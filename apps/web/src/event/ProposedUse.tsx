'use client';

import { eventDays, USE_MEASURES } from '@quartermark/engine/log';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { type UseFormReturn, useWatch } from 'react-hook-form';
import { useTRPC } from '../client/trpc.ts';
import { Button } from '../components/index.ts';
import type { EventFields } from './event-fields.ts';
import { shownAmount } from './planned-use-fields.ts';
import { proposalWords, proposedTexts } from './proposal-words.ts';

type ProposedUseProps = {
  garageId: string;
  form: UseFormReturn<EventFields>;
  carName: (id: string) => string;
};

/** What this car, or the garage, did at the last events of the sort; taken over in one press. */
export function ProposedUse({ garageId, form, carName }: ProposedUseProps) {
  const trpc = useTRPC();
  const fields = useWatch({ control: form.control }) as EventFields;
  const { sort, start, end } = fields;
  const [carId = null] = fields.cars;
  const dated = start !== '' && (end === '' || end >= start);
  const days = dated && end !== '' ? eventDays({ start, end }) : 1;
  const { data } = useQuery({
    ...trpc.event.propose.queryOptions({ garageId, sort, days, carId }),
    placeholderData: keepPreviousData,
  });
  const proposal = data?.sort === sort ? data.proposal : null;
  if (!proposal) return null;
  const texts = proposedTexts(proposal.use, sort);
  const same = USE_MEASURES[sort].every(
    (measure) => shownAmount(fields, measure) === texts[measure],
  );
  return (
    <div>
      <p>{proposalWords(proposal, sort, days, carId === null ? 'The car' : carName(carId))}</p>
      {same ? null : (
        <Button
          look="quiet"
          onClick={() =>
            form.setValue(
              'use',
              { ...fields.use, ...texts, unit: proposal.use.distance?.unit ?? fields.use.unit },
              { shouldDirty: true },
            )
          }
        >
          Use that
        </Button>
      )}
    </div>
  );
}
