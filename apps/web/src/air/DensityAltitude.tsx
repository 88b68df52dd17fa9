import type { MoistAir } from '@quartermark/engine/air';
import type { DistanceUnit } from '@quartermark/engine/units';
import { Answer } from './Answer.tsx';
import { densityAltitude } from './air-sums.ts';

/** How high the air of today is worth. */
export function DensityAltitude({ air, unit }: { air: MoistAir | null; unit: DistanceUnit }) {
  return (
    <Answer
      of="density altitude"
      sum={air && densityAltitude(air, unit)}
      waits="Temperature, humidity and pressure together give the density altitude."
    >
      <p>
        Density altitude is the height at which the standard atmosphere is as thin as the air here:
        the thinner it is, the less of it an engine takes in. Moist air is thinner than dry air of
        the same pressure, so the temperature is first raised to the one at which dry air would be
        as thin. Pressure over that temperature, to the power of 0.235, then tells the height:
        145,366 ft less that share of it.
      </p>
      <p>
        Source: National Weather Service, density altitude sheet, for this and for the vapour’s
        pressure; the standard atmosphere of ICAO Doc 7488/3 where a weather report’s pressure is
        taken back to the height of the place.
      </p>
    </Answer>
  );
}
