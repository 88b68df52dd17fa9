import type { ReactNode } from 'react';
import { type Option, QuantityField } from '../../../components/index.ts';
import { CORNERS, type Corner } from '../../corners.ts';
import { errorAt, type PartProps } from '../../parts.ts';
import type { TypedText } from '../../typed.ts';
import { UnitChoice } from '../../UnitChoice.tsx';
import styles from './Corner.module.css';

type ByCornerProps<R extends { corner: Corner }> = {
  rows: readonly R[];
  of: string;
  units: readonly Option[];
  /** the unit shown as chosen, and what changes all of them */
  unit: string;
  onUnit: (unit: string) => void;
  children: (row: R, at: number) => ReactNode;
};

/** The rows of a list under their corners, each with its place in the list; a corner without any is left out. */
export function ByCorner<R extends { corner: Corner }>(props: ByCornerProps<R>) {
  const { rows, of, units, unit, onUnit, children } = props;
  return (
    <div className={styles.corners}>
      <div className={styles.unit}>
        <UnitChoice of={of} units={units} value={unit} onChange={onUnit} />
      </div>
      {CORNERS.filter(({ value }) => rows.some(({ corner }) => corner === value)).map(
        ({ value, words }) => (
          <fieldset key={value} className={styles.corner}>
            <legend>{words}</legend>
            {rows.map((row, at) => (row.corner === value ? children(row, at) : null))}
          </fieldset>
        ),
      )}
    </div>
  );
}

type CornerReadingProps = Pick<PartProps, 'errors'> & {
  label: string;
  /** in the form and in the entry alike, but for the part's own name */
  path: string;
  units: readonly Option[];
  value: TypedText;
  onChange: (value: TypedText) => void;
};

/** One reading at a corner; its unit stands beside it and is chosen for all of them. */
export function CornerReading({ errors, path, units, ...field }: CornerReadingProps) {
  return (
    <QuantityField
      {...field}
      name={`measure.${path}`}
      units={units.filter(({ value }) => value === field.value.unit)}
      error={errorAt(errors, path)}
    />
  );
}
