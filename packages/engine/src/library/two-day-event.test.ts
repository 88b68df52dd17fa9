import { describe, expect, it } from 'vitest';
import { carCase, reading, use } from '../../test/car-case.ts';
import { outing } from '../../test/planned-use.ts';
import { formatDay, parseDay } from '../calendar/day-number.ts';
import { itemInput, type UseClass } from '../log/item.ts';
import { caseItem } from '../readers/book-case.ts';
import { analyseCase } from '../wear/analyse-case.ts';
import type { AtEvent } from '../wear/result.ts';
import type { Proposal } from './proposal.ts';
import { proposeItems } from './propose-items.ts';
import { trackDays } from './track-days.ts';

const TODAY = '2026-04-20';
const from = (days: number) => formatDay(parseDay(TODAY) + days);
const COUNTED_BY_TRACK_DAYS = 1.25;

/** A year of 1,000 km a month and six circuit days, all work done today, a weekend of eight sessions ahead. */
function atWeekend({ key, item }: Proposal): AtEvent {
  const done = itemInput.parse({ ...item, baseline: { on: TODAY, historyComplete: true } });
  const entries = [
    ...[340, 285, 230, 175, 120, 65].map((ago) => use(from(-ago), 'circuit', { sessions: 4 })),
    ...Array.from({ length: 13 }, (_, at) => reading(from(30 * at - 360), 10_000 + 1000 * at)),
  ];
  const weekend = outing('weekend', from(40), { end: from(41), sessions: 8, attend: 0.9 });
  const car = carCase(TODAY, entries, [caseItem({ id: key, ...done })], {
    hemisphere: 'N',
    planned: [weekend],
  });
  const at = analyseCase(car, { toEvents: true }).items[0]?.atEvent?.[0];
  if (at === undefined) throw new Error(`nothing is said of ${key}`);
  return at;
}

const USES: UseClass[][] = [['circuit'], ['road', 'touring', 'circuit', 'strip', 'autocross']];
const proposals = USES.flatMap((uses) =>
  [{}, { induction: 'forced' as const }].flatMap((profile) => proposeItems(profile, 'km', uses)),
).filter(({ askManual }) => !askManual);
const lasts = (it: Proposal) => (trackDays(it.item) ?? Infinity) > COUNTED_BY_TRACK_DAYS;

describe('proposeItems() before a weekend on the circuit', () => {
  it.each(proposals.filter(lasts))('lets $key, freshly done, last until it is over', (proposal) => {
    expect(atWeekend(proposal)).toMatchObject({ ready: true });
  });

  it('has looks that belong to every track day, and plain brake fluid, come between its days', () => {
    const short = proposals.filter((it) => !lasts(it));
    expect([...new Set(short.map(({ key }) => key))].sort()).toEqual([
      'brakeFluid',
      'padsLook',
      'tyresLook',
      'wheelFasteners',
    ]);
    for (const it of short)
      expect(atWeekend(it)).toMatchObject({ ready: false, earliestWorkDate: null });
  });

  it('has high-temperature brake fluid last the weekend', () => {
    const fluid = proposals.find(({ key }) => key === 'brakeFluid');
    if (fluid === undefined || fluid.askManual) throw new Error('no brake fluid');
    const [months] = fluid.item.limits;
    const sessions = { measure: 'sessions' as const, value: 18 };
    const hot = {
      ...fluid,
      item: { ...fluid.item, limits: [months, sessions] as [typeof months, typeof sessions] },
    };
    expect(atWeekend(hot)).toMatchObject({ ready: true });
  });
});
