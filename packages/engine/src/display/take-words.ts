import type { VolumeUnit } from '../log/units.ts';
import { listWords } from './grammar.ts';
import { fuelUnit, mostAmount, roughAmount, TAKE_STEP } from './take-amount.ts';

/** Litres to take for one car; `cautiousL` is not exceeded nine times in ten; null: nobody can say. */
export type OilTaken = {
  likelyL: number | null;
  cautiousL: number | null;
  /** false: its use was never measured, so no number is shown as one */
  measured: boolean;
  grade: string | null;
  approval: string | null;
};
export type FuelTaken = {
  likelyL: number | null;
  cautiousL: number | null;
  octane: number | null;
};

const oilName = ({ grade, approval }: Pick<OilTaken, 'grade' | 'approval'>): string => {
  const words = [grade, approval].filter((part) => part !== null).join(', ');
  return words === '' ? 'oil, grade not on record' : words;
};

const fuelName = ({ octane }: Pick<FuelTaken, 'octane'>): string =>
  octane === null ? 'fuel' : `fuel of ${octane} octane`;

/** Both ends of what is used; null where nobody can say. */
function range(
  { likelyL, cautiousL }: { likelyL: number | null; cautiousL: number | null },
  unit: VolumeUnit,
  step: number,
): string | null {
  if (cautiousL === null)
    return likelyL === null ? null : `likely ${roughAmount(likelyL, unit, step)}`;
  const most = mostAmount(cautiousL, unit, step);
  const likely = likelyL === null ? most : roughAmount(likelyL, unit, step);
  return likely === most ? `likely ${most}` : `likely ${likely}, seldom more than ${most}`;
}

/**
 * The oil to take along for a car.
 *
 * @example oilTaken({ likelyL: 0.6, cautiousL: 0.9, measured: true, grade: '10W-60', approval: null }, 'l')
 * // "10W-60: likely 0.6 L, seldom more than 0.9 L"
 */
export function oilTaken(oil: OilTaken, unit: VolumeUnit): string {
  const used = oil.measured ? range(oil, unit, TAKE_STEP.oil) : null;
  const why = oil.measured
    ? 'nobody can say how much'
    : 'how much it uses there was never measured';
  return `${oilName(oil)}: ${used ?? why}`;
}

/** The fuel a car needs there and on the way. @example fuelTaken(fuel, 'l') // "fuel of 98 octane: likely 120 L, seldom more than 150 L" */
export function fuelTaken(fuel: FuelTaken, unit: VolumeUnit): string {
  const used = range(fuel, fuelUnit(unit), TAKE_STEP.fuel);
  return `${fuelName(fuel)}: ${used ?? 'nobody can say how much'}`;
}

type Together = { name: string; litres: number; without: string[] };

/**
 * What to take along for all cars together: oils of one grade and approval in one sum, fuel by its octane.
 * A car of which nobody can say is named, never counted as nothing.
 *
 * @example takenTogether([{ name: 'Ardvane', oil, fuel }], 'l') // ["10W-60: 0.9 L", "fuel of 98 octane: 150 L"]
 */
export function takenTogether(
  cars: readonly { name: string; oil: OilTaken; fuel: FuelTaken }[],
  unit: VolumeUnit,
): string[] {
  const oils = summed(
    cars.map(({ name, oil }) => ({
      car: name,
      name: oilName(oil),
      litres: oil.measured ? (oil.cautiousL ?? oil.likelyL) : null,
    })),
  );
  const fuels = summed(
    cars.map(({ name, fuel }) => ({
      car: name,
      name: fuelName(fuel),
      litres: fuel.cautiousL ?? fuel.likelyL,
    })),
  );
  const words = ({ name, litres, without }: Together, inUnit: VolumeUnit, step: number) => {
    const sum = litres > 0 || without.length === 0 ? mostAmount(litres, inUnit, step) : null;
    const unknown = without.length === 0 ? null : `not known for ${listWords(without, 6)}`;
    return `${name}: ${[sum, unknown].filter((part) => part !== null).join(', ')}`;
  };
  return [
    ...oils.map((one) => words(one, unit, TAKE_STEP.oil)),
    ...fuels.map((one) => words(one, fuelUnit(unit), TAKE_STEP.fuel)),
  ];
}

function summed(all: readonly { car: string; name: string; litres: number | null }[]): Together[] {
  const sums = new Map<string, Together>();
  for (const { car, name, litres } of all) {
    const sum = sums.get(name) ?? { name, litres: 0, without: [] };
    if (litres === null) sum.without.push(car);
    else sum.litres += litres;
    sums.set(name, sum);
  }
  return [...sums.values()];
}
