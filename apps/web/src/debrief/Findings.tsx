'use client';

import { Button, Choice, SelectField, TextField } from '../components/index.ts';
import { SEVERITIES, WHERE } from '../record/kinds/finding/FindingParts.tsx';
import { emptyFinding, type FindingFields } from '../record/kinds/finding/fields.ts';
import type { Problems } from '../record/typed.ts';
import { type CarDebriefProps, errorsAt } from './car-debrief-props.ts';
import styles from './Debrief.module.css';
import { PartFoot } from './PartFoot.tsx';
import { partKey } from './part-key.ts';

const PLACES = [{ value: '', words: 'Not said' }, ...WHERE];

/** What was found on the car, one after the other. */
export function Findings(props: CarDebriefProps) {
  const { car, fields, saved, onChange } = props;
  const { findings } = fields;
  const keyAt = (at: number) => partKey.finding(car.carId, at);
  return (
    <>
      {findings.map((finding, at) =>
        saved[keyAt(at)] ? null : (
          <fieldset
            // findings are only added at the end, and their place is their line
            // biome-ignore lint/suspicious/noArrayIndexKey: the place is what a finding is known by
            key={at}
            className={styles.line}
          >
            <legend>A finding</legend>
            <FindingRow
              finding={finding}
              errors={errorsAt(props, keyAt(at))}
              onChange={(changed) =>
                onChange({
                  findings: findings.map((one, place) =>
                    place === at ? { ...one, ...changed } : one,
                  ),
                })
              }
            />
            <PartFoot {...props} partKey={keyAt(at)} />
          </fieldset>
        ),
      )}
      <div>
        <Button onClick={() => onChange({ findings: [...findings, emptyFinding()] })}>
          Add a finding
        </Button>
      </div>
    </>
  );
}

type FindingRowProps = {
  finding: FindingFields;
  errors: Problems;
  onChange: (changed: Partial<FindingFields>) => void;
};

function FindingRow({ finding, errors, onChange }: FindingRowProps) {
  return (
    <>
      <TextField
        label="What you found"
        autoComplete="off"
        name="finding.what"
        value={finding.what}
        onChange={(typed) => onChange({ what: typed.currentTarget.value })}
        error={errors['entry.what']}
      />
      <SelectField
        label="Where"
        optional
        name="finding.corner"
        options={PLACES}
        value={finding.corner}
        onChange={(chosen) =>
          onChange({ corner: chosen.currentTarget.value as FindingFields['corner'] })
        }
        error={errors['entry.where']}
      />
      {finding.corner === 'elsewhere' ? (
        <TextField
          label="Where it is"
          hint="Such as under the gearbox."
          optional
          autoComplete="off"
          name="finding.place"
          value={finding.place}
          onChange={(typed) => onChange({ place: typed.currentTarget.value })}
        />
      ) : null}
      <Choice
        label="How bad it is"
        size="small"
        layout="stack"
        options={SEVERITIES}
        value={finding.severity === '' ? null : finding.severity}
        onChange={(severity) => onChange({ severity })}
        error={errors['entry.severity']}
      />
    </>
  );
}
