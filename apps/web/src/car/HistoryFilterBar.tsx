'use client';

import { Checkbox } from '@base-ui/react/checkbox';
import { KIND_WORDS } from '@quartermark/engine/display';
import { ENTRY_KINDS } from '@quartermark/engine/log';
import { SelectField, TextField } from '../components/index.ts';
import { carFilterOptions } from '../forms/car-filter.ts';
import styles from './HistoryFilterBar.module.css';
import { type HistoryFilter, kindNamed, TEXT_MAX } from './history-filter.ts';
import { GROUP_OF, GROUP_WORDS, KIND_GROUPS } from './kind-groups.ts';

const ALL_KINDS = [{ value: '', words: 'All kinds' }];
const KIND_CHOICES = KIND_GROUPS.map((group) => ({
  name: GROUP_WORDS[group],
  options: [
    { value: group, words: `All: ${GROUP_WORDS[group].toLowerCase()}` },
    ...ENTRY_KINDS.filter((kind) => GROUP_OF[kind] === group).map((kind) => ({
      value: kind,
      words: KIND_WORDS[kind],
    })),
  ],
}));

/** A car that the history can be narrowed to. */
export type FilterCar = { carId: string; name: string };

type HistoryFilterBarProps = {
  filter: HistoryFilter;
  onChange: (filter: HistoryFilter) => void;
  /** where the history is of all cars */
  cars?: readonly FilterCar[] | undefined;
};

/** Narrows the history: by kind, by words, and with removed entries on demand. */
export function HistoryFilterBar({ filter, onChange, cars }: HistoryFilterBarProps) {
  return (
    <search className={styles.bar}>
      {cars ? (
        <SelectField
          label="Car"
          name="car"
          options={carFilterOptions(cars)}
          value={filter.car ?? ''}
          onChange={(event) => onChange({ ...filter, car: event.currentTarget.value || null })}
        />
      ) : null}
      <SelectField
        label="Kind"
        name="kind"
        options={ALL_KINDS}
        groups={KIND_CHOICES}
        value={filter.kind ?? ''}
        onChange={(event) => onChange({ ...filter, kind: kindNamed(event.currentTarget.value) })}
      />
      <TextField
        label="Words in it"
        name="text"
        type="search"
        autoComplete="off"
        maxLength={TEXT_MAX}
        value={filter.text}
        onChange={(event) => onChange({ ...filter, text: event.currentTarget.value })}
      />
      {/* biome-ignore lint/a11y/noLabelWithoutControl: the checkbox renders its own input */}
      <label className={styles.removed}>
        <Checkbox.Root
          checked={filter.removed}
          onCheckedChange={(removed) => onChange({ ...filter, removed })}
          className={styles.box}
        >
          <Checkbox.Indicator className={styles.tick}>✓</Checkbox.Indicator>
        </Checkbox.Root>
        Removed ones too
      </label>
    </search>
  );
}
