'use client';

import { capital } from '@quartermark/engine/display';
import { itemRole } from '@quartermark/engine/log';
import { Choice, TextField, Tick } from '../components/index.ts';
import { FormPair } from '../forms/Form.tsx';
import { ROLE_WORDS } from '../items/use-words.ts';
import styles from './RequirementParts.module.css';
import type { RequirementFields } from './requirement-fields.ts';
import { FLOORS, floorWords } from './requirement-lines.ts';

export type Changed = Partial<RequirementFields>;

export type PartProps = {
  fields: RequirementFields;
  change: (changed: Changed) => void;
  error: (field: string) => string | undefined;
};

/** What the needs of a group are measured by. */
export function RequirementFigures({ of, ...part }: PartProps & { of: string }) {
  const { fields, change, error } = part;
  if (of === 'The car')
    return (
      <FormPair>
        <Days
          {...part}
          name="odometerDays"
          label="Odometer read within"
          hint="Days before today."
        />
        <Days
          {...part}
          name="inspectionDays"
          label="Looked over within"
          hint="Days before the event."
        />
        <TextField
          label="Loudest allowed"
          optional
          suffix="dB"
          figures
          inputMode="decimal"
          autoComplete="off"
          name="noiseDb"
          value={fields.noiseDb}
          onChange={(event) => change({ noiseDb: event.currentTarget.value })}
          error={error('noiseDb')}
        />
      </FormPair>
    );
  if (of === 'Items and their limits')
    return (
      <>
        <Roles {...part} name="limitsOf" label="Limits of these block" />
        <Roles {...part} name="watched" label="These must be watched" />
      </>
    );
  if (of === 'Oil')
    return (
      <Choice
        label="At the end the oil stays above"
        hint="On a stick from MIN to MAX. A wet sump can run dry in a long corner well above MIN."
        size="small"
        options={floorOptions(fields.oilFloor)}
        value={fields.oilFloor}
        onChange={(oilFloor) => change({ oilFloor })}
        error={error('oilFloor')}
      />
    );
  return null;
}

/** A floor between the marks, from elsewhere, stays as one more choice. */
function floorOptions(value: string) {
  const options: { value: string; words: string }[] = [...FLOORS];
  if (options.some((each) => each.value === value)) return options;
  return [...options, { value, words: capital(floorWords(Number(value))) }];
}

type DaysProps = PartProps & {
  name: 'odometerDays' | 'inspectionDays';
  label: string;
  hint: string;
};

function Days({ name, label, hint, fields, change, error }: DaysProps) {
  return (
    <TextField
      label={label}
      hint={hint}
      suffix="days"
      figures
      inputMode="numeric"
      autoComplete="off"
      name={name}
      value={fields[name]}
      onChange={(event) => change({ [name]: event.currentTarget.value })}
      error={error(name)}
    />
  );
}

type RolesProps = PartProps & { name: 'limitsOf' | 'watched'; label: string };

function Roles({ name, label, fields, change }: RolesProps) {
  const chosen = fields[name];
  return (
    <fieldset className={styles.roles}>
      <legend>{label}</legend>
      {itemRole.options.map((role) => (
        <Tick
          key={role}
          label={capital(ROLE_WORDS[role])}
          name={`${name}.${role}`}
          checked={chosen.includes(role)}
          onChange={(on) =>
            change({
              // in the order of the roles, so that the same choice is the same list
              [name]: itemRole.options.filter((one) => (one === role ? on : chosen.includes(one))),
            })
          }
        />
      ))}
    </fieldset>
  );
}
