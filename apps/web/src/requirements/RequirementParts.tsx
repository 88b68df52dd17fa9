'use client';

import {
  FIXED_NEED_WORDS,
  REQUIREMENT_GROUPS,
  REQUIREMENT_WORDS,
  WEIGHT_WORDS,
} from '@quartermark/engine/display';
import { NEED_WEIGHTS, type NeedWeight, type WeighedNeed } from '@quartermark/engine/log';
import { DateField, SelectField, TextField } from '../components/index.ts';
import { FormPair } from '../forms/Form.tsx';
import { type Changed, type PartProps, RequirementFigures } from './RequirementFigures.tsx';
import styles from './RequirementParts.module.css';
import type { RequirementFields } from './requirement-fields.ts';

const WEIGHT_OPTIONS = NEED_WEIGHTS.map((value) => ({ value, words: WEIGHT_WORDS[value] }));

type RequirementPartsProps = {
  fields: RequirementFields;
  onChange: (fields: RequirementFields) => void;
  /** what is wrong, by `path` and the field */
  errors: Readonly<Record<string, string>>;
  /** where the server names them, such as `event.requirements` */
  path: string;
};

/** What is asked of a car and its drivers, need by need. */
export function RequirementParts({ fields, onChange, errors, path }: RequirementPartsProps) {
  const change = (changed: Changed) => onChange({ ...fields, ...changed });
  const part = { fields, change, error: (field: string) => errors[`${path}.${field}`] };
  return (
    <div className={styles.parts}>
      <p>
        Always asked, and nobody can put it aside: no{' '}
        {Object.values(FIXED_NEED_WORDS).join(', no ')}.
      </p>
      {REQUIREMENT_GROUPS.map(({ name, needs }) => (
        <fieldset key={name} className={styles.group}>
          <legend>{name}</legend>
          <div className={styles.needs}>
            {needs.map((need) => (
              <NeedRow key={need} need={need} {...part} />
            ))}
          </div>
          <RequirementFigures of={name} {...part} />
        </fieldset>
      ))}
      <Rules {...part} />
    </div>
  );
}

function NeedRow({ need, fields, change, error }: PartProps & { need: WeighedNeed }) {
  const { name, means } = REQUIREMENT_WORDS[need];
  return (
    <SelectField
      label={name}
      hint={means}
      name={`weights.${need}`}
      options={WEIGHT_OPTIONS}
      value={fields.weights[need]}
      onChange={(event) =>
        change({
          weights: { ...fields.weights, [need]: event.currentTarget.value as NeedWeight },
        })
      }
      error={error(`weights.${need}`)}
    />
  );
}

/** Rules change with their edition; what is asked by them should say which one was read. */
function Rules({ fields, change, error }: PartProps) {
  return (
    <fieldset className={styles.group}>
      <legend>Whose rules</legend>
      <FormPair>
        <TextField
          label="Rule set"
          hint="Whose rules these are, if anybody’s."
          optional
          autoComplete="off"
          name="rulesName"
          value={fields.rulesName}
          onChange={(event) => change({ rulesName: event.currentTarget.value })}
          error={error('rulesName')}
        />
        <DateField
          label="Edition of"
          optional
          name="rulesEdition"
          value={fields.rulesEdition}
          onChange={(event) => change({ rulesEdition: event.currentTarget.value })}
          error={error('rulesEdition')}
        />
      </FormPair>
    </fieldset>
  );
}
