'use client';

import { Button, Choice } from '../components/index.ts';
import styles from './Zones.module.css';
import { ZONES, type Zone, type ZoneField } from './zones.ts';

/** From the top down, as the stick is held. */
const DOWN = [...ZONES].reverse();

type ZonePressProps = { onPress: (zone: Zone) => void; busy: boolean };

/** The stick's seven marks, each a target for a glove; one press says it all. */
export function ZonePress({ onPress, busy }: ZonePressProps) {
  return (
    <fieldset aria-label="The oil stands at" className={styles.stick}>
      {DOWN.map(({ zone, words }) => (
        <Button key={zone} className={styles.zone} busy={busy} onClick={() => onPress(zone)}>
          <span className={styles.mark} data-zone={zone} aria-hidden="true" />
          {words}
        </Button>
      ))}
    </fieldset>
  );
}

type ZoneChoiceProps = {
  label: string;
  value: ZoneField;
  onChange: (zone: ZoneField) => void;
  error?: string | undefined;
  /** there is a finer reading, which may stay */
  finer?: string | null;
  /** it may stay unsaid */
  optional?: boolean;
};

/** A level as one of the stick's marks, in a form. */
export function ZoneChoice({ label, value, onChange, error, finer, optional }: ZoneChoiceProps) {
  const options = [
    ...(optional ? [{ value: '' as const, words: 'Not read' }] : []),
    ...(finer ? [{ value: 'asRead' as const, words: `As it was read: ${finer}` }] : []),
    ...ZONES.map(({ zone, words }) => ({ value: zone, words })),
  ];
  return (
    <Choice
      label={label}
      size="small"
      options={options}
      value={value}
      onChange={onChange}
      error={error}
    />
  );
}
