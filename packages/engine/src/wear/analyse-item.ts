import { formatDay } from '../calendar/day-number.ts';
import { notOnRecordAt, projectToEvent } from '../forecast/at-event.ts';
import { forecastItem } from '../forecast/forecast-item.ts';
import type { Forecasts, JudgedItem } from '../forecast/forecasts.ts';
import type { PlannedOccasion } from '../forecast/planned-occasions.ts';
import type { CaseItem, CaseLimit } from '../history/case.ts';
import { accrue } from './accrue.ts';
import { overrule } from './due-at-once.ts';
import { judgeCalendar } from './judge-calendar.ts';
import { judgeSevere } from './judge-severe.ts';
import type { LastService } from './last-service.ts';
import type { Ledger } from './ledger.ts';
import type {
  AmountLimitResult,
  AtEvent,
  CalendarLimitResult,
  DueDates,
  ItemResult,
  LimitResult,
} from './result.ts';
import { roundAmount } from './round-amount.ts';
import { bindingOf, isOver, LOOK_AGAIN_DAYS, NOT_ON_RECORD, stateOf } from './state-of.ts';

type AmountLimit = Extract<CaseLimit, { weights: unknown }>;

/**
 * Says of one item what has accrued, how much is left and in which state it is.
 *
 * @param item the item; limits > 0
 * @param ledger the use it is judged by
 * @param service its last service or starting point; null if nothing is on record
 */
export function analyseItem(
  item: CaseItem,
  ledger: Ledger,
  service: LastService | null,
): ItemResult {
  const judged =
    service === null ? analyseWithoutService(item, ledger) : analyseSince(item, ledger, service);
  return overrule(judged, item, ledger, service);
}

/** Only a label's day can be judged without a service. */
function analyseWithoutService(item: CaseItem, ledger: Ledger): ItemResult {
  const { asOfDay, forecasts } = ledger;
  const labels = item.limits.filter((limit) => limit.measure === 'date');
  const limits = labels.map((limit) => judgeCalendar(limit, false, null, asOfDay, null));
  const onlyLabels = item.limits.length > 0 && labels.length === item.limits.length;
  const known = onlyLabels || limits.some((limit) => isOver(limit, asOfDay));
  const earliest = limits.reduce<CalendarLimitResult | null>(
    (first, limit) => (first === null || limit.dueDate < first.dueDate ? limit : first),
    null,
  );
  const forecast =
    forecasts === null || !onlyLabels || earliest === null
      ? null
      : labelForecast(earliest, item.warnDays);
  const judged = stateOf(limits, limits, asOfDay, item.warnDays, forecast?.pDueWithinLead ?? null);
  return {
    id: item.id,
    ...(known ? judged : NOT_ON_RECORD),
    binding: earliest === null ? null : earliest.measure,
    limits,
    ...(limits.length > 0 && { severe: null, dueSoonHorizonDays: item.warnDays + LOOK_AGAIN_DAYS }),
    ...(forecasts !== null && !known && { dueDate: NO_DATES }),
    ...forecast,
    ...atEvents(ledger, (event, all) =>
      onlyLabels
        ? projectToEvent(judgedLabels(item, limits), earliest?.dueDate ?? null, event, all)
        : notOnRecordAt(event, asOfDay),
    ),
    evidence: [],
  };
}

/** Nobody can say when something falls due that was never done. */
const NO_DATES: DueDates = { p10: null, p50: null, p90: null };

function judgedLabels(item: CaseItem, results: readonly CalendarLimitResult[]): JudgedItem {
  const labels = item.limits.filter((limit) => limit.measure === 'date');
  const limits = labels.flatMap((rule, index) => {
    const result = results[index];
    return result === undefined ? [] : [{ rule, result }];
  });
  return { item, limits, hardUse: null, service: null };
}

/** A label's day needs no forecast to be known. */
function labelForecast({ dueDate: on, remainingDays }: CalendarLimitResult, warnDays: number) {
  const dueDate: DueDates = { p10: on, p50: on, p90: on };
  return {
    dueDate,
    pDueWithinLead: remainingDays <= warnDays + LOOK_AGAIN_DAYS ? 1 : 0,
    probablyOverdue: false,
    expects: null,
  };
}

const NO_FORECAST = { forecast: null, chance: null };

function analyseSince(item: CaseItem, ledger: Ledger, service: LastService): ItemResult {
  const { contributions, asOfDay } = ledger;
  const { severe } = item;
  const hardUse =
    severe === null
      ? null
      : judgeSevere({ ...item, severe }, contributions, service.position, service.day);
  const sources = new Set<number>();
  const judge = (limit: CaseLimit, isSevere: boolean): LimitResult => {
    const switchedOn = isSevere ? (hardUse?.sinceDay ?? 'notYet') : null;
    if (!isAmount(limit)) return judgeCalendar(limit, isSevere, service.day, asOfDay, switchedOn);
    return judgeAmount(limit, isSevere, ledger, service, switchedOn, sources);
  };
  const usual = item.limits.map((rule) => ({ rule, result: judge(rule, false) }));
  const hard = (severe?.limits ?? []).map((rule) => ({ rule, result: judge(rule, true) }));
  const judged = { item, limits: [...usual, ...hard], hardUse, service };
  const all = judged.limits.map(({ result }) => result);
  const inForce = hardUse?.result.active ? all : usual.map(({ result }) => result);
  const dueSoonHorizonDays = item.warnDays + LOOK_AGAIN_DAYS;
  const { forecast, chance } =
    ledger.forecasts === null
      ? NO_FORECAST
      : forecastItem(judged, dueSoonHorizonDays, ledger.forecasts);
  const state = stateOf(inForce, all, asOfDay, item.warnDays, chance);
  return {
    id: item.id,
    ...state,
    service: formatDay(service.day),
    binding: bindingOf(inForce),
    limits: all,
    severe: hardUse?.result ?? null,
    dueSoonHorizonDays,
    ...forecast,
    ...(forecast && { probablyOverdue: forecast.probablyOverdue && state.state !== 'overdue' }),
    ...atEvents(ledger, (event, forecasts) =>
      projectToEvent(judged, forecast?.dueDate.p10 ?? null, event, forecasts),
    ),
    evidence: evidenceOf(ledger, service, sources),
  };
}

/** Only where it was asked for. */
function atEvents(
  { forecasts, projectTo }: Ledger,
  project: (event: PlannedOccasion, forecasts: Forecasts) => AtEvent,
): Pick<ItemResult, 'atEvent'> {
  if (forecasts === null || projectTo.length === 0) return {};
  return { atEvent: projectTo.map((event) => project(event, forecasts)) };
}

function isAmount(limit: CaseLimit): limit is AmountLimit {
  return 'weights' in limit;
}

function judgeAmount(
  limit: AmountLimit,
  severe: boolean,
  ledger: Ledger,
  service: LastService,
  switchedOn: number | null | 'notYet',
  sources: Set<number>,
): AmountLimitResult {
  const {
    accrued,
    byClass,
    estimated,
    reachedOn,
    sources: own,
  } = accrue(ledger.contributions, service.position, limit);
  for (const position of own) sources.add(position);
  const value = roundAmount(limit.value);
  return {
    measure: limit.measure,
    severe,
    limit: value,
    known: ledger.isKnown(service, limit.measure),
    accrued,
    remaining: roundAmount(value - accrued),
    fraction: value > 0 ? accrued / value : 1,
    byClass,
    estimated,
    reachedOn: reachedUnder(reachedOn, switchedOn),
  };
}

/** A hard-use limit counts from the day it was switched on, and not before. */
function reachedUnder(
  reachedOn: string | null,
  switchedOn: number | null | 'notYet',
): string | null {
  if (reachedOn === null || switchedOn === 'notYet') return null;
  const since = switchedOn === null ? reachedOn : formatDay(switchedOn);
  return since > reachedOn ? since : reachedOn;
}

/** The service first, then the uses and readings that count, by order. Starting points have no id. */
function evidenceOf(
  { timeline }: Ledger,
  service: LastService,
  sources: ReadonlySet<number>,
): string[] {
  const ids = new Set([timeline[service.position]?.entry.id ?? null]);
  // one walk instead of sorting the places, of which there are as many as entries
  timeline.forEach(({ entry }, position) => {
    if (sources.has(position)) ids.add(entry.id);
  });
  return [...ids].filter((id) => id !== null);
}
