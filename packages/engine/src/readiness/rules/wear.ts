import { formatNumber } from '../../display/format-number.ts';
import { capital } from '../../display/grammar.ts';
import { floorWords, placeWords, valueWords } from '../../display/wear-words.ts';
import type { ComponentWear, PositionWear, WearUse } from '../../gear/wear-rate/result.ts';
import { NO_USE, wearAfter } from '../../gear/wear-rate/wear-after.ts';
import { STRETCH } from '../../gear/wear-rate/wear-basis.ts';
import { leadDaysNow, orderBy } from '../../orders/index.ts';
import type { Piece } from '../asked.ts';
import { afterWork, type Draft, draft, MET, unknown, type Work } from '../draft.ts';
import type { Known } from '../known.ts';

/** What the event and the way home add to a part's use. */
function furtherUse({ event }: Known): WearUse {
  if (event === null) return NO_USE;
  const { planned, wayKm } = event;
  const way = wayKm ?? 0;
  if (planned === null) return { ...NO_USE, roadKm: way };
  const { sort } = event.event;
  if (sort === 'circuit' || sort === 'autocross')
    // a session stands for 40 km of circuit where a distance alone is planned
    return { ...NO_USE, sessions: planned.sessions || planned.distanceKm / 40, roadKm: way };
  if (sort === 'dragStrip') return { ...NO_USE, launches: planned.launches, roadKm: way };
  return { ...NO_USE, roadKm: planned.distanceKm + way };
}

const ofSort = ({ car }: Known, sort: string) =>
  car.parts.filter(({ gear }) => gear.gear.kind === 'component' && gear.gear.sort === sort);

/** Pads thick enough at the end of the event, and to begin a day of hard use. */
export function padNeeds(known: Known): Draft[] {
  const sets = ofSort(known, 'pads');
  if (sets.length === 0) return [noneOn(known, 'pads', 'Brake pads')];
  return sets.flatMap((set) => [
    wearNeed(known, set, 'pads', (what) => what === 'padInner' || what === 'padOuter'),
    ...startNeed(known, set),
  ]);
}

/** Tread above the law's and the owner's least at the end. */
export function tyreNeeds(known: Known): Draft[] {
  const sets = ofSort(known, 'tyreSet');
  if (sets.length === 0) return [noneOn(known, 'tyres', 'Tyres')];
  return sets.map((set) => wearNeed(known, set, 'tyres', (what) => what === 'tread'));
}

/** On roads a car may run on parts that nobody keeps a book of; not at the limit. */
function noneOn(known: Known, kind: 'pads' | 'tyres', title: string): Draft {
  return draft(
    kind,
    {
      title,
      reason: `Which ${kind} are on it is not on record.`,
      adviceOnly: !known.hard,
    },
    unknown(known, {
      work: 'writeDown',
      what: `Write down which ${kind} are on it, and measure them`,
      record: { at: 'entry', kind: 'fit' },
    }),
  );
}

const measure = (set: Piece): Work => ({
  work: 'measure',
  what: `Measure ${set.gear.gear.name}, and write it down`,
  record: { at: 'entry', kind: 'measure', component: set.gear.id },
});

type Left = { position: PositionWear; cautious: number | null; floorMm: number; spare: number };

function wearNeed(
  known: Known,
  set: Piece,
  kind: 'pads' | 'tyres',
  is: (what: PositionWear['what']) => boolean,
): Draft {
  const { name } = set.gear.gear;
  const wear = set.result?.life?.wear ?? null;
  const told = { subject: set.gear.id, title: name };
  const positions =
    wear?.positions.filter(({ what, floors }) => is(what) && floors.length > 0) ?? [];
  if (wear === null || positions.length === 0)
    return draft(
      kind,
      { ...told, reason: `${name}: never measured, so nobody knows what is left.` },
      unknown(known, measure(set)),
    );
  const after = wearAfter({ ...wear, positions }, furtherUse(known));
  const left = positions.map((position, at): Left => {
    const floorMm = position.floors[0]?.mm ?? 0;
    const forecast = after[at]?.cautious ?? null;
    // how fast it wears is of no matter to what is below its floor already
    const { value } = position.last;
    const cautious = forecast === null && value < floorMm ? value : forecast;
    return {
      position,
      cautious,
      floorMm,
      spare: cautious === null ? Number.NaN : cautious - floorMm,
    };
  });
  const open = left.find(({ spare }) => Number.isNaN(spare));
  const known_ = left.filter(({ spare }) => !Number.isNaN(spare));
  const worst = known_.reduce<Left | null>(
    (a, b) => (a === null || b.spare < a.spare ? b : a),
    null,
  );
  const evidence = positions.map(({ last }) => last.entry);
  if (worst !== null && worst.spare < 0) {
    const { position, cautious, floorMm } = worst;
    const floor = position.floors[0];
    return draft(
      kind,
      {
        ...told,
        evidence: [...new Set(evidence)],
        margin: { value: worst.spare, unit: position.unit },
        reason: `${capital(placeWords(position))}: could end at ${valueWords(Math.max(0, cautious ?? 0), position.unit)}, below ${floor ? floorWords(floor) : formatNumber(floorMm, 1)}; last measured ${valueWords(position.last.value, position.unit)}.`,
      },
      afterWork(known, renew(known, set, kind)),
    );
  }
  if (open !== undefined)
    return draft(
      kind,
      {
        ...told,
        evidence: [...new Set(evidence)],
        reason: `${capital(placeWords(open.position))}: ${valueWords(open.position.last.value, open.position.unit)} when last measured; how fast it wears is not known.`,
        adviceOnly: left.every(
          ({ position, spare }) => !Number.isNaN(spare) || isPlenty(wear, position),
        ),
      },
      unknown(known, measure(set)),
    );
  const { position, cautious } = worst as Left;
  return draft(
    kind,
    {
      ...told,
      evidence: [...new Set(evidence)],
      margin: { value: (worst as Left).spare, unit: position.unit },
      reason: `${capital(placeWords(position))} ${known.event === null ? 'has' : 'ends at'} ${valueWords(cautious ?? 0, position.unit)} or more, nine times in ten.`,
    },
    MET,
  );
}

/** More tread above the least than a day of hard use takes (common practice, no source). */
const PLENTY_OF_TREAD_MM = 2;

/**
 * Measured once, and thick enough to begin a day with: how fast it wears stays unknown, but no set could ever be
 * used for the first time if that kept a car from it.
 */
function isPlenty({ startOfDay, basis }: ComponentWear, position: PositionWear): boolean {
  const { what, last, useSince, floors, finding } = position;
  if (finding === 'rises' || useSince > STRETCH[basis]) return false;
  const floorMm = floors[0]?.mm ?? 0;
  const least = what === 'tread' ? floorMm + PLENTY_OF_TREAD_MM : (startOfDay?.mm ?? null);
  return least !== null && last.value >= least;
}

function startNeed(known: Known, set: Piece): Draft[] {
  const wear = set.result?.life?.wear ?? null;
  if (wear?.startOfDay == null) return [];
  const { mm } = wear.startOfDay;
  const pads = wear.positions.filter(({ what }) => what !== 'disc' && what !== 'tread');
  const thinnest = pads.reduce<PositionWear | null>(
    (a, b) => (a === null || lowOf(b) < lowOf(a) ? b : a),
    null,
  );
  if (thinnest === null) return [];
  const told = {
    subject: set.gear.id,
    title: `${set.gear.gear.name}, at the start`,
    evidence: [thinnest.last.entry],
    margin: { value: lowOf(thinnest) - mm, unit: 'mm' } as const,
  };
  const words = `${capital(placeWords(thinnest))} has ${valueWords(lowOf(thinnest), 'mm')} or more now`;
  if (lowOf(thinnest) >= mm) return [draft('padStart', { ...told, reason: `${words}.` }, MET)];
  return [
    draft(
      'padStart',
      {
        ...told,
        reason: `${words}; a day of hard use should begin with ${formatNumber(mm, 1)} mm.`,
      },
      afterWork(known, renew(known, set, 'pads')),
    ),
  ];
}

const lowOf = ({ now, last }: PositionWear) => now?.low ?? last.value;

function renew(known: Known, set: Piece, kind: 'pads' | 'tyres'): Work {
  const item = set.items.find(({ role }) => role === kind);
  const orders = set.orders.filter((order) => order.item === item?.id);
  const leadDays = item?.leadDays ?? 0;
  const parts = orderBy({
    latestWork: known.event?.latest ?? null,
    likely: null,
    leadDays,
    orders,
    service: null,
    asOf: known.today,
  });
  return {
    work: kind === 'pads' ? 'brakes' : 'tyres',
    what: `Renew ${set.gear.gear.name}`,
    record: { at: 'entry', kind: 'fit', component: set.gear.id },
    parts: parts?.kind === 'orderBy' && leadDays === 0 ? null : parts,
    leadDays: leadDaysNow(leadDays, orders, null),
  };
}
