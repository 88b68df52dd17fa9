'use client';

import type { EventSort, Requirements } from '@quartermark/engine/log';
import type { Route } from 'next';
import Link from 'next/link';
import { Button } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { RequirementParts } from './RequirementParts.tsx';
import {
  type RequirementFields,
  readRequirements,
  requirementFields,
} from './requirement-fields.ts';
import { type GarageAsks, whoseWords } from './whose-words.ts';

/** Where the server names what an event asks for itself. */
const PATH = 'event.requirements';

type EventAsksProps = {
  garageId: string;
  sort: EventSort;
  /** what the garage asks, by the use */
  rows: readonly GarageAsks[];
  /** null: what the garage asks counts */
  fields: RequirementFields | null;
  onChange: (fields: RequirementFields | null) => void;
  errors: Readonly<Record<string, string>>;
};

/** What an event asks of its cars: whose requirements count, and for this event alone its own. */
export function EventAsks({ garageId, sort, rows, fields, onChange, errors }: EventAsksProps) {
  const garage = rows.find(({ use }) => use === sort);
  if (garage === undefined) return null;
  const own = fields === null ? null : (readRequirements(fields, PATH, {}) ?? garage.requirements);
  const wrong = Object.keys(errors).some((field) => field.startsWith(PATH));
  return (
    <Fold title="What this event asks" now={whoseWords(own, garage)} wrong={wrong}>
      {fields === null ? (
        <Usual {...{ garageId, sort }} asks={garage.requirements} onChange={onChange} />
      ) : (
        <>
          <div>
            <Button onClick={() => onChange(null)}>Back to the garage’s</Button>
          </div>
          <RequirementParts fields={fields} onChange={onChange} errors={errors} path={PATH} />
        </>
      )}
    </Fold>
  );
}

type UsualProps = Pick<EventAsksProps, 'garageId' | 'sort' | 'onChange'> & { asks: Requirements };

function Usual({ garageId, sort, asks, onChange }: UsualProps) {
  return (
    <>
      <p>
        The organiser’s rules and the maker’s manual decide; what counts for every event of this
        sort is set in the{' '}
        <Link href={`/g/${garageId}/settings/asks/${sort}` as Route} prefetch={false}>
          settings
        </Link>
        .
      </p>
      <div>
        <Button onClick={() => onChange(requirementFields(asks))}>Set it for this event</Button>
      </div>
    </>
  );
}
