import type { Option } from '../components/index.ts';

/** The cars that a list can be narrowed to; the first is all of them. */
export function carFilterOptions(cars: readonly { carId: string; name: string }[]): Option[] {
  return [
    { value: '', words: 'All cars' },
    ...cars.map(({ carId, name }) => ({ value: carId, words: name })),
  ];
}
