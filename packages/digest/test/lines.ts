import type { DueLine } from '@quartermark/engine/display';
import type { CarReadiness, Need, Verdict } from '@quartermark/engine/readiness';
import type { CarTonight } from '../src/facts/car-tonight.ts';
import type { EventDays } from '../src/facts/fact.ts';

/** An item as the garage stores it: brake fluid by its months, in limits for long. */
export function lineOf(over: Partial<DueLine> = {}): DueLine {
  const day = over.day ?? '2027-06-30';
  return {
    id: 'fluid',
    name: 'Brake fluid',
    state: 'fine',
    reasonCode: null,
    binding: 'months',
    limit: 24,
    remaining: null,
    unit: null,
    day,
    likely: day,
    early: day,
    dates: { early: day, likely: day, late: day },
    overdueSince: null,
    lastDone: '2024-06-09',
    leadDays: 0,
    parts: null,
    ...over,
  };
}

type Known = NonNullable<CarTonight['known']>;

/** A car in use of which everything is known and nothing is asked. */
export function carOf(
  over: Partial<Omit<CarTonight, 'known'>> & { known?: Partial<Known> | null } = {},
  today = '2026-06-15',
): CarTonight {
  const { known, ...rest } = over;
  return {
    id: 'c1',
    name: 'Brindle',
    unit: 'km',
    events: [],
    failedSince: null,
    putOffs: [],
    ...rest,
    known:
      known === null
        ? null
        : {
            asOf: today,
            lane: { status: 'inUse' },
            lines: [],
            urgent: null,
            oil: oilOf(today, today),
            ...known,
          },
  };
}

/** Looked at on a day, the next look by what the day says. */
export function oilOf(looked: string | null, by: string | null): NonNullable<Known['oil']> {
  return {
    lastLook: looked === null ? null : { entry: `look ${looked}`, on: looked },
    nextLook: { km: null, atOdometerKm: null, by },
    notices: [],
  };
}

/** How a car stands for an event, with titles of what holds it back. */
export function standingFor(
  event: EventDays,
  verdict: Verdict,
  open: readonly string[] = [],
): CarTonight['events'][number] {
  const status = {
    ready: 'met',
    canBeReady: 'metAfterWork',
    notInTime: 'notMet',
    notOnRecord: 'unknown',
  } as const;
  const needs = open.map(
    (title): Need => ({
      id: title,
      kind: 'limit',
      subject: null,
      weight: 'blocking',
      status: status[verdict.word],
      title,
      margin: null,
      reason: '',
      evidence: [],
      remedy: null,
      accepted: null,
      mayAccept: false,
    }),
  );
  const readiness: CarReadiness = { car: 'c1', use: 'circuit', event: event.id, verdict, needs };
  return { event, readiness };
}
