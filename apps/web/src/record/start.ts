import type { LastValues } from '@quartermark/api/client';

/** What the fields of a form start from. */
export type Start = {
  entryId: string;
  today: string;
  /** of the car's odometer */
  unit: 'km' | 'mi';
  /** of the garage */
  volumeUnit: 'l' | 'usQt' | 'impQt';
  last: LastValues | null;
  /** the component it is about, where the way here began at it */
  component?: string | null;
  /** the finding, incident or notice that is answered */
  notice?: string | null;
};

/** Nobody asks a garage for all its units: what goes with its litres or quarts is taken first. */
export function usualUnits({ volumeUnit }: Start) {
  return volumeUnit === 'l'
    ? ({ pressure: 'bar', torque: 'nm' } as const)
    : ({ pressure: 'psi', torque: 'lbfFt' } as const);
}
