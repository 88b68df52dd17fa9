import type { CaseItem, CaseLimit } from '../history/case.ts';
import { USE_CLASSES } from '../log/item.ts';
import type { SevereSwitch } from '../wear/judge-severe.ts';
import type { LastService } from '../wear/last-service.ts';
import type { LimitResult } from '../wear/result.ts';
import { type Reach, reachOf } from './chance-reached.ts';
import { fitMeasure, type MeasureFit, type WeightedMeasure } from './measure-fit.ts';
import type { Season } from './season.ts';

/** A judged limit with its rule. */
export type JudgedLimit = { rule: CaseLimit; result: LimitResult };

/** An item as judged today: what its forecast starts from. */
export type JudgedItem = {
  item: CaseItem;
  /** usual and hard-use limits */
  limits: readonly JudgedLimit[];
  /** null if it has no hard-use schedule */
  hardUse: SevereSwitch | null;
  /** null only where nothing but labels is judged */
  service: LastService | null;
};

/** Forecasts of a car's weighted measures, each fitted once. */
export type Forecasts = {
  season: Season;
  fitOf(of: WeightedMeasure): MeasureFit;
  /** the same, with an event taken as attended for certain */
  reachOf(of: WeightedMeasure, attended: string | null): Reach;
};

export function forecastsOf(season: Season): Forecasts {
  const fits = new Map<string, MeasureFit>();
  const reaches = new Map<string, Reach>();
  const fitOf = (of: WeightedMeasure) => remember(fits, keyOf(of), () => fitMeasure(season, of));
  return {
    season,
    fitOf,
    reachOf: (of, attended) =>
      remember(reaches, `${keyOf(of)} ${attended ?? ''}`, () =>
        reachOf(fitOf(of), season.table.activeAhead, attended),
      ),
  };
}

function remember<V>(known: Map<string, V>, key: string, make: () => V): V {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  known.set(key, made);
  return made;
}

const keyOf = ({ measure, weights }: WeightedMeasure) =>
  `${measure} ${USE_CLASSES.map((one) => weights[one] ?? 1).join(' ')}`;
