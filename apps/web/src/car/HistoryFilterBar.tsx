'use client';

import { Checkbox } from '@base-ui/react/checkbox';
import { KIND_WORDS } from '@quartermark/engine/display';
import { ENTRY_KINDS } from '@quartermark/engine/log';
import { SelectField, TextField } from '../components/index.ts';
import styles from './HistoryFilterBar.module.css';
import { type HistoryFilter, TEXT_MAX } from './history-filter.ts';

const KIND_OPTIONS = [
  { value: '', words: 'All kinds' },
  ...ENTRY_KINDS.map((kind) => ({ value: kind, words: KIND_WORDS[kind] })),
];

type HistoryFilterBarProps = { filter: HistoryFilter; onChange: (filter: HistoryFilter) => void };

/** Narrows the history: by kind, by words, and with removed entries on demand. */
export function HistoryFilterBar({ filter, onChange }: HistoryFilterBarProps) {
  return (
    <search className={styles.bar}>
      <SelectField
        label="Kind"
        name="kind"
        options={KIND_OPTIONS}
        value={filter.kind ?? ''}
        onChange={(event) => {
          const { value } = event.currentTarget;
          onChange({ ...filter, kind: ENTRY_KINDS.find((kind) => kind === value) ?? null });
        }}
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
