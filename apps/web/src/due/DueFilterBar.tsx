import { DateField, SelectField } from '../components/index.ts';
import { carFilterOptions } from '../forms/car-filter.ts';
import styles from './DueFilterBar.module.css';
import { type DueFilter, sortNamed, stateNamed } from './due-filter.ts';

const SORT_OPTIONS = [
  { value: 'likely', words: 'Likely day' },
  { value: 'early', words: 'Earliest day' },
  { value: 'car', words: 'Car' },
];

const STATE_OPTIONS = [
  { value: '', words: 'Every state' },
  { value: 'overdue', words: 'Overdue' },
  { value: 'dueSoon', words: 'Due soon' },
  { value: 'fine', words: 'In limits' },
  { value: 'unknown', words: 'Not on record, or in part' },
];

type DueFilterBarProps = {
  filter: DueFilter;
  onChange: (filter: DueFilter) => void;
  cars: readonly { carId: string; name: string }[];
};

/** Sorts the list, and narrows it by car, by state and to what comes before a day. */
export function DueFilterBar({ filter, onChange, cars }: DueFilterBarProps) {
  return (
    <search className={styles.bar}>
      <SelectField
        label="Sort by"
        name="sort"
        options={SORT_OPTIONS}
        value={filter.sort}
        onChange={({ currentTarget }) =>
          onChange({ ...filter, sort: sortNamed(currentTarget.value) })
        }
      />
      <SelectField
        label="Car"
        name="car"
        options={carFilterOptions(cars)}
        value={filter.car ?? ''}
        onChange={({ currentTarget }) => onChange({ ...filter, car: currentTarget.value || null })}
      />
      <SelectField
        label="State"
        name="state"
        options={STATE_OPTIONS}
        value={filter.state ?? ''}
        onChange={({ currentTarget }) =>
          onChange({ ...filter, state: stateNamed(currentTarget.value) })
        }
      />
      <DateField
        label="Before"
        name="before"
        value={filter.before}
        onChange={({ currentTarget }) => onChange({ ...filter, before: currentTarget.value })}
      />
    </search>
  );
}
