import { addDays } from '../calendar/add.ts';
import { lookAhead, type Reach } from '../forecast/chance-reached.ts';
import type { History } from '../history/index.ts';
import type { Book } from '../log/book.ts';
import { oilNotice } from '../log/oil-notice.ts';
import { keptEntries } from '../matters/index.ts';
import type { OilAnswer, OilLooks, OilNotice, OilNoticeKind, OilOperation } from '../oil/index.ts';
import { readOdometer } from '../wear/read-odometer.ts';
import type { BookLedger } from './book-oil.ts';
import { riseStart } from './rise-start.ts';

/** A car in use is looked at every week. Common practice, no source. */
const LOOK_DAYS = 7;

export type LooksOf = {
  answer: OilAnswer;
  ledger: BookLedger;
  /** expected distance, from the last known use on */
  ahead: Reach;
  inUse: boolean;
};

/** What the log says of the looks at the stick, beside the ledger's own answers. */
export function oilLooks(book: Book, history: History, of: LooksOf): OilLooks {
  const days = new Map(book.entries.map(({ id, on }) => [id, on]));
  const onDay = (entry: string | number) => days.get(String(entry)) ?? book.asOf;
  const { events, operations, folded } = of.ledger;
  const looks = events.filter(({ happening: { is } }) => is !== 'use' && is !== 'repair');
  const last = looks.at(-1)?.entry;
  const lastLook = last === undefined ? null : { entry: String(last), on: onDay(last) };
  const { answer, inUse } = of;
  const risen = riseStart(of.ledger);
  return {
    levelsRead: operations.flatMap(({ steps }) => steps.filter(isLevel)).length,
    lastLook,
    readLow: folded.state.lowRead
      ? answer.lastReading?.level === 'none'
        ? 'none'
        : 'atMin'
      : null,
    readOver: folded.state.overRead,
    nextLook: {
      ...nextLook(history, of),
      by: inUse ? nextDay(lastLook?.on ?? null, book.asOf) : null,
    },
    risenSince: risen === null ? null : onDay(risen.entry),
    notices: noticesOf(book, of, lastLook, onDay),
  };
}

const isLevel = (step: OilOperation['steps'][number]) =>
  step.does === 'observe' && step.read !== null && !step.read.offProcedure;

/** A week after the last look; today where that has passed, or where nobody ever looked. */
function nextDay(last: string | null, asOf: string): string {
  const day = last === null ? asOf : addDays(last, LOOK_DAYS);
  return day < asOf ? asOf : day;
}

function nextLook(
  history: History,
  { answer, ahead, ledger }: LooksOf,
): { km: number | null; atOdometerKm: number | null } {
  if (answer.status === 'none') return { km: null, atOdometerKm: null };
  const { km } = answer.checkBy;
  const odometer = readOdometer(history);
  if (odometer === null) return { km, atOdometerKm: null };
  const driven = Math.max(0, ledger.totalKm - odometer.totalKm) + lookAhead(ahead, 0).mean;
  return { km, atOdometerKm: odometer.readingKm + driven + km };
}

function noticesOf(
  book: Book,
  { answer, ahead, inUse, ledger: { events } }: LooksOf,
  lastLook: OilLooks['lastLook'],
  onDay: (entry: string | number) => string,
): OilNotice[] {
  const told: { kind: OilNoticeKind; entry: string }[] = [];
  // without any look there is nothing that could have become low: it is not on record
  if (lastLook !== null) {
    const weekKm = lookAhead(ahead, LOOK_DAYS).mean - lookAhead(ahead, 0).mean;
    const soon = inUse && answer.status !== 'none' && answer.checkBy.km < weekKm;
    if (answer.lowNow) told.push({ kind: 'low', entry: lastLook.entry });
    else if (soon) told.push({ kind: 'lowSoon', entry: lastLook.entry });
  }
  const alert = answer.alerts.at(-1);
  if (alert !== undefined && alert.closedAtEntry === undefined) {
    // one that opens by what was driven since belongs to the last entry there is
    const at = alert.openedAtEntry === 'asOf' ? events.at(-1)?.entry : alert.openedAtEntry;
    if (at !== undefined) told.push({ kind: 'useRisen', entry: String(at) });
  }
  if (answer.unexplainedRise !== null)
    told.push({ kind: 'unexplainedRise', entry: String(answer.unexplainedRise.entry) });
  const answers = answersOf(book);
  return told.map(({ kind, entry }) => {
    const id = oilNotice(kind, book.car.id, entry);
    return { id, kind, entry, on: onDay(entry), answer: answers.get(id) ?? null };
  });
}

/** The last answer to each notice, by the order of the log. */
function answersOf({ entries, asOf }: Book): Map<string, NonNullable<OilNotice['answer']>> {
  return new Map(
    keptEntries(entries, asOf).flatMap((entry) =>
      entry.kind === 'answer'
        ? [[entry.notice, { entry: entry.id, on: entry.on, words: entry.answer }]]
        : [],
    ),
  );
}
