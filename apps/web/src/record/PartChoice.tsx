'use client';

import type { FieldPathByValue } from 'react-hook-form';
import { useWatch } from 'react-hook-form';
import { SelectField } from '../components/index.ts';
import type { About, KnownPart } from './about.ts';
import type { PartProps } from './parts.ts';
import type { RecordFields } from './record-fields.ts';

type PartChoiceProps = PartProps & {
  about: About;
  name: FieldPathByValue<RecordFields, string>;
  path: string;
  label: string;
  /** what the first, empty option says */
  none: string;
  /** which parts are offered; all of them unless said */
  only?: (part: KnownPart) => boolean;
  optional?: boolean;
};

/** One of the garage's components, with where it is now. */
export function PartChoice(props: PartChoiceProps) {
  const { form, errors, about, name, path, label, none, only = () => true, optional } = props;
  const chosen = String(useWatch({ control: form.control, name }));
  const parts = (about.parts ?? []).filter((part) => only(part) || part.id === chosen);
  // one removed since stays what it was written down as, and one that is not at hand is kept
  const lost = chosen !== '' && !parts.some(({ id }) => id === chosen);
  return (
    <SelectField
      label={label}
      {...(optional === undefined ? {} : { optional })}
      {...(about.parts?.length === 0
        ? { hint: 'No set or part is on record yet; add one under sets, tools and people.' }
        : {})}
      options={[
        { value: '', words: none },
        ...parts.map((part) => ({ value: part.id, words: partWords(part) })),
        ...(lost
          ? [{ value: chosen, words: about.parts ? 'A part no longer kept' : 'As chosen' }]
          : []),
      ]}
      error={errors[`entry.${path}`]}
      {...form.register(name)}
    />
  );
}

const partWords = ({ name, on }: KnownPart): string => (on ? `${name}, on ${on.name}` : name);
