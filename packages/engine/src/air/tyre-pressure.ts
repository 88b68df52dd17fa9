import { type Allowed, STATION_PRESSURE, within } from './within.ts';

/** How much a tyre warms: its gauge pressures cold and hot, Pa, or its temperatures, K. */
export type Warming =
  | { by: 'pressures'; coldGaugePa: number; hotGaugePa: number }
  | { by: 'temperatures'; coldK: number; hotK: number };

/** The cold pressure to set for a hot one, Pa by the gauge. */
export type ColdPressure = {
  /** what to set; never below the maker's minimum */
  coldGaugePa: number;
  /** what it would take to reach the hot pressure that is wanted */
  wantedColdGaugePa: number;
  /** what it will be hot, set as said */
  hotGaugePa: number;
  /** `kept`: not below it; `given`: the minimum is given instead of what is wanted; `notOnRecord`: nobody said */
  minimum: 'kept' | 'given' | 'notOnRecord';
  notes: string[];
};

const STANDARD_PA = 101_325;
const GAUGE: Omit<Allowed, 'what'> = {
  unit: 'Pa',
  from: 0,
  to: 1_000_000,
  give: 'what the gauge shows, 1 bar is 100,000 Pa and 1 psi is 6,894.76 Pa',
};
const TYRE_K: Omit<Allowed, 'what'> = {
  unit: 'K',
  from: 220,
  to: 420,
  give: 'the temperature of the air in the tyre, 0 °C is 273.15 K',
};
const NOTES = {
  given: 'The cold pressure for that would be below the maker’s minimum: the minimum is given.',
  notOnRecord: 'The maker’s minimum is not on record: look it up, and never go below it.',
  road: 'Set tyres that were bled hot back to the maker’s cold pressure before the road.',
  sameStart: 'Holds where the tyre starts out as warm as it was when that was measured.',
} as const;

/**
 * Gauge pressure of a tyre at another temperature, its volume unchanged (Gay-Lussac): (pg + pa) T2/T1 - pa.
 *
 * @param gaugePa at `fromK`; temperatures are those of the air in the tyre
 * @param atmospherePa of the place, Pa
 * @throws RangeError for what is no pressure or temperature of a tyre
 * @example gaugeAt({ gaugePa: 250_000, fromK: 308.15, toK: 233.15 }, 101_300) // 164,498
 */
export function gaugeAt(
  { gaugePa, fromK, toK }: { gaugePa: number; fromK: number; toK: number },
  atmospherePa: number = STANDARD_PA,
): number {
  const air = within(atmospherePa, STATION_PRESSURE);
  const absolute = within(gaugePa, { what: 'tyre pressure', ...GAUGE }) + air;
  const from = within(fromK, { what: 'tyre temperature at first', ...TYRE_K });
  const to = within(toK, { what: 'tyre temperature then', ...TYRE_K });
  return (absolute * to) / from - air;
}

/**
 * The cold pressure that becomes a wanted hot one, and what to set: that, or the maker's minimum where that
 * is more. Absolute pressures rise with the ratio of the temperatures, or of the pressures measured.
 *
 * @param wanted `hotGaugePa` wanted; `minimumGaugePa` the maker's, cold; null: not on record
 * @throws RangeError for what is no pressure or temperature of a tyre, or where hot is not above cold
 * @example coldFor({ hotGaugePa: 230_000, minimumGaugePa: 200_000 }, { by: 'temperatures', coldK: 293.15, hotK: 353.15 })
 * // { coldGaugePa: 200_000, minimum: 'given', ... }
 */
export function coldFor(
  wanted: { hotGaugePa: number; minimumGaugePa: number | null },
  warming: Warming,
  atmospherePa: number = STANDARD_PA,
): ColdPressure {
  const air = within(atmospherePa, STATION_PRESSURE);
  const ratio = ratioOf(warming, air);
  const hot = within(wanted.hotGaugePa, { what: 'hot pressure wanted', ...GAUGE });
  const least =
    wanted.minimumGaugePa === null
      ? null
      : within(wanted.minimumGaugePa, { what: 'maker’s minimum', ...GAUGE });
  const wantedColdGaugePa = (hot + air) / ratio - air;
  const tooLow = least !== null && wantedColdGaugePa < least;
  const coldGaugePa = tooLow ? least : wantedColdGaugePa;
  const minimum = least === null ? 'notOnRecord' : tooLow ? 'given' : 'kept';
  return {
    coldGaugePa,
    wantedColdGaugePa,
    hotGaugePa: tooLow ? (coldGaugePa + air) * ratio - air : hot,
    minimum,
    notes: [
      ...(minimum === 'kept' ? [] : [NOTES[minimum]]),
      ...(warming.by === 'pressures' ? [NOTES.sameStart] : []),
      NOTES.road,
    ],
  };
}

/** Absolute hot over absolute cold, more than 1. */
function ratioOf(warming: Warming, air: number): number {
  const [cold, hot] =
    warming.by === 'pressures'
      ? [
          within(warming.coldGaugePa, { what: 'cold pressure measured', ...GAUGE }) + air,
          within(warming.hotGaugePa, { what: 'hot pressure measured', ...GAUGE }) + air,
        ]
      : [
          within(warming.coldK, { what: 'cold tyre temperature', ...TYRE_K }),
          within(warming.hotK, { what: 'hot tyre temperature', ...TYRE_K }),
        ];
  if (hot > cold) return hot / cold;
  throw new RangeError(
    `could not reckon how much the tyre warms: its hot ${warming.by === 'pressures' ? 'pressure' : 'temperature'} is not above the cold one; give the cold one first`,
  );
}
