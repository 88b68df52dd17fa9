import type { History } from '../history/build-history.ts';
import type { Entry } from '../log/entry.ts';
import type { WheelsState } from './result.ts';
import { type UseSince, useSince } from './use-since.ts';
import { type WheelOnRecord, wheelCorners } from './wheel-corners.ts';

/** Torque is checked again after so many kilometres (common practice 80 to 160 km, no source). */
export const RECHECK_KM = 80;

/** What is true of any wheel is said before what is true of all; the one that needs a hand first. */
const WORST_FIRST = ['off', 'recheckDue', 'torqued', 'rechecked'] as const;

const NOT_ON_RECORD: WheelsState = {
  state: 'notOnRecord',
  corners: [],
  entry: null,
  on: null,
  sinceKm: null,
  sinceSessions: null,
};

type Judged = { wheel: WheelOnRecord; state: (typeof WORST_FIRST)[number]; since: UseSince };

/**
 * How the wheels stand: off (and their torque not on record since), torqued, to be checked again after
 * the first session or 80 km, checked again. Wheels are followed apart; the worst of them is said, by
 * the earliest entry where several are alike. A distance that nobody knows makes the check due.
 *
 * @param kept entries of one car without tombstones, in the order of the log
 * @param history of the same car on the same day
 */
export function wheelsState(kept: readonly Entry[], history: History): WheelsState {
  const judged = wheelCorners(kept).map((wheel) => judge(wheel, history));
  const state = WORST_FIRST.find((one) => judged.some((it) => it.state === one));
  if (state === undefined) return NOT_ON_RECORD;
  const alike = judged.filter((it) => it.state === state);
  const place = ({ wheel }: Judged) => kept.indexOf(wheel.entry);
  const { wheel, since } = alike.reduce((a, b) => (place(b) < place(a) ? b : a));
  return {
    state,
    corners: alike.map((it) => it.wheel.corner),
    entry: wheel.entry.id,
    on: wheel.entry.on,
    sinceKm: since.distanceKm,
    sinceSessions: since.sessions,
  };
}

function judge(wheel: WheelOnRecord, history: History): Judged {
  const since = useSince(history, wheel.entry);
  const { distanceKm, sessions } = since;
  const due = sessions > 0 || distanceKm === null || distanceKm >= RECHECK_KM;
  return { wheel, state: wheel.change === 'torqued' && due ? 'recheckDue' : wheel.change, since };
}
