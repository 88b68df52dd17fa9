import { describe, expect, it } from 'vitest';
import { type Drafted, entriesOf, gearBook, km } from '../../../test/gear-book.ts';
import type { GearDraft } from '../../log/gear.ts';
import { analyseGear } from '../analyse-gear.ts';
import type { ComponentWear } from './result.ts';
import { wearAfter } from './wear-after.ts';
import { NO_USE } from './wear-basis.ts';

const mm = (text: string) => ({ text, unit: 'mm' as const });
const pads: GearDraft = {
  kind: 'component',
  name: 'Pads',
  sort: 'pads',
  condition: 'new',
};
const tyres: GearDraft = { ...pads, name: 'Set', sort: 'tyreSet' };
const fit = { kind: 'fit', component: 'set', change: 'on', car: 'a' } as const;
const day = (on: string, sessions: number): Drafted => ({
  kind: 'session',
  use: 'circuit',
  on,
  time: '10:00',
  car: 'a',
  sessions,
});
const padsAt = (on: string, inner: string, outer?: string): Drafted => ({
  kind: 'measure',
  component: 'set',
  on,
  time: '18:00',
  pads: [{ corner: 'frontLeft', inner: mm(inner), ...(outer && { outer: mm(outer) }) }],
});
const season = (...values: string[]): Drafted[] => [
  { ...fit, on: '2026-03-01' },
  ...values.flatMap((value, index) => [
    day(`2026-04-${String(2 * index + 1).padStart(2, '0')}`, 4),
    padsAt(`2026-04-${String(2 * index + 1).padStart(2, '0')}`, value),
  ]),
];

function wearOf(drafts: readonly Drafted[], gear: GearDraft = pads): ComponentWear {
  const { life } = analyseGear(gearBook({ gear, asOf: '2026-06-01', entries: entriesOf(drafts) }));
  if (life?.wear == null) throw new Error('nothing was measured');
  return life.wear;
}
const first = (drafts: readonly Drafted[], gear: GearDraft = pads) => {
  const [position] = wearOf(drafts, gear).positions;
  if (position === undefined) throw new Error('no position');
  return position;
};
const floors = (drafts: readonly Drafted[], gear: GearDraft) =>
  first(drafts, gear).floors.map(({ whose, mm: value }) => [whose, value]);

describe('componentWear()', () => {
  it('gives value, rate and use left of each position, with the use since', () => {
    // 1 mm in 4 sessions; 8 mm after 16, and 2 sessions more since
    const entries = [...season('11', '10', '9', '8'), day('2026-05-01', 2)];
    const { finding, rate, now, floors: minima, points } = first(entries);
    expect(finding).toBe('line');
    expect(points.map(({ use, value }) => [use, value])).toEqual([
      [4, 11],
      [8, 10],
      [12, 9],
      [16, 8],
    ]);
    expect(rate?.likely).toBeCloseTo(0.25, 9);
    expect(now?.likely).toBeCloseTo(7.5, 9);
    expect(now?.low).toBeLessThan(7.4);
    expect(minima).toHaveLength(1);
    expect(minima[0]).toMatchObject({ whose: 'practice', mm: 3 });
    expect(minima[0]?.left?.likely).toBeCloseTo(18, 9);
    expect(minima[0]?.left?.low).toBeGreaterThan(10);
    expect(minima[0]?.left?.low).toBeLessThan(17);
  });

  it('keeps inner and outer pads apart, in order of corner and place', () => {
    const drafts = [
      { ...fit, on: '2026-03-01' },
      padsAt('2026-03-02', '11', '12'),
      day('2026-03-03', 8),
      padsAt('2026-03-04', '7', '10'),
    ];
    const found = wearOf(drafts).positions.map(({ where, rate }) => [where, rate?.likely]);
    expect(found).toEqual([
      ['front left, inner', expect.closeTo(0.5, 9)],
      ['front left, outer', expect.closeTo(0.25, 9)],
    ]);
  });

  it('takes one measurement and the new depth for a rough line', () => {
    const { finding, rate, points } = first(season('9'), { ...pads, newDepth: mm('11') });
    expect(finding).toBe('rough');
    expect(rate?.likely).toBeCloseTo(0.5, 9);
    expect(points[0]).toMatchObject({ use: 0, value: 11, entry: null });
  });

  it('gives no rate of one measurement, and a value only while nothing was done since', () => {
    const single = first(season('9'));
    expect(single).toMatchObject({ finding: 'single', rate: null, now: { likely: 9 } });
    expect(single.floors[0]?.left).toBeNull();
    expect(first([...season('9'), day('2026-05-01', 2)]).now).toBeNull();
  });

  it('does not take the new depth for a part that came used', () => {
    const used = { ...pads, condition: 'used' as const, newDepth: mm('11') };
    expect(first(season('9'), used)).toMatchObject({ finding: 'single', points: [{ value: 9 }] });
  });

  it('gives no rate of measurements without use between them', () => {
    const twice = [...season('9'), padsAt('2026-04-09', '8.9')];
    expect(first(twice)).toMatchObject({ finding: 'noUse', rate: null, now: { likely: 8.9 } });
    const short: Drafted = {
      kind: 'drive',
      use: 'road',
      car: 'a',
      on: '2026-04-05',
      distance: km(100),
    };
    expect(first([...season('9'), short, padsAt('2026-04-09', '8.9')]).finding).toBe('noUse');
  });

  it('says that values rise, and draws no line through them', () => {
    const risen = first(season('9', '8', '11', '10'));
    expect(risen).toMatchObject({
      finding: 'rises',
      now: null,
      rate: null,
      line: null,
      rise: { from: { value: 8 }, to: { value: 11, on: '2026-04-05' } },
    });
    // measured twice, pads differ by some 0.3 mm
    expect(first(season('9', '8', '8.3', '7')).finding).not.toBe('rises');
  });

  it('says that no wear was seen yet, and how much is left at least', () => {
    const flat = first(season('9', '9', '9'));
    expect(flat).toMatchObject({
      finding: 'flat',
      rate: { likely: 0, low: 0 },
      now: { likely: expect.closeTo(9, 9) },
    });
    expect(flat.floors[0]?.left).toMatchObject({ likely: null, high: null });
    expect(flat.floors[0]?.left?.low).toBeGreaterThan(20);
  });

  it('starts afresh with a fit that says new', () => {
    const renewed: Drafted[] = [
      ...season('9', '7', '5'),
      { ...fit, on: '2026-05-01', condition: 'new' },
      day('2026-05-02', 4),
      padsAt('2026-05-02', '10'),
    ];
    expect(first(renewed)).toMatchObject({ finding: 'single', points: [{ use: 4, value: 10 }] });
    expect(wearOf(renewed).useKnown).toBe(true);
  });

  it('counts a used part from its first measurement on the shelf', () => {
    const shelf = [padsAt('2026-02-01', '10'), ...season('9', '8')];
    const used = { ...pads, condition: 'used' as const };
    expect(first(shelf, used).points.map(({ use }) => use)).toEqual([0, 4, 8]);
    expect(wearOf(shelf, used)).toMatchObject({ useKnown: true, neverFitted: false });
    const onCar = shelf.map((it, index) => (index === 0 ? { ...it, car: 'a' } : it));
    expect(wearOf(onCar as Drafted[], used).useKnown).toBe(false);
    expect(wearOf(shelf.slice(0, 1), used).neverFitted).toBe(true);
  });

  it('counts road tyres in kilometres, and a session among them as 2,000 km', () => {
    const tread = (on: string, text: string): Drafted => ({
      kind: 'measure',
      component: 'set',
      on,
      time: '18:00',
      tread: [{ corner: 'rearLeft', groove: 'middle', depth: mm(text) }],
    });
    const odometer = (on: string, value: number): Drafted => ({
      kind: 'odometer',
      on,
      car: 'a',
      odometer: km(value),
    });
    const drafts = [
      odometer('2026-02-28', 900),
      { ...fit, on: '2026-03-01', odometer: km(1000) },
      tread('2026-03-01', '8'),
      odometer('2026-04-01', 11_000),
      tread('2026-04-01', '6'),
    ];
    const { basis, mixed, positions, useKnown } = wearOf(drafts, tyres);
    expect([basis, mixed, useKnown]).toEqual(['km', false, true]);
    expect(positions[0]?.rate?.likely).toBeCloseTo(2 / 10_000, 9);
    expect(positions[0]?.floors.map(({ left }) => Math.round(left?.likely ?? 0))).toEqual([
      22_000, 22_063,
    ]);
    const withSession = [
      ...drafts.slice(0, 3),
      { ...day('2026-03-20', 1), distance: km(40) },
      ...drafts.slice(3),
    ];
    const both = wearOf(withSession, tyres);
    expect([both.basis, both.mixed]).toEqual(['km', true]);
    expect(both.positions[0]?.points[1]?.use).toBeCloseTo(9960 + 2000, 3);
  });

  it('takes the least of several measurements of one place on one day', () => {
    const tread = ['6', '5.5', '5.8'].map((text) => ({
      corner: 'rearLeft' as const,
      depth: mm(text),
    }));
    const drafts: Drafted[] = [
      { ...fit, on: '2026-03-01' },
      { kind: 'measure', component: 'set', on: '2026-03-02', tread },
    ];
    expect(first(drafts, tyres).points.map(({ value }) => value)).toEqual([5.5]);
  });

  it('has both minima, the owner’s beside the law of the road it goes on', () => {
    const tread: Drafted = {
      kind: 'measure',
      component: 'set',
      on: '2026-03-02',
      tread: [{ corner: 'rearLeft', depth: mm('5') }],
    };
    const own = { leastDepth: mm('2') };
    const at = (more: object) => floors([tread], { ...tyres, ...more } as GearDraft);
    expect(at({})).toEqual([
      ['lawEu', 1.6],
      ['lawUs', 1.5875],
    ]);
    expect(at({ ...own, roadLaw: 'us' })).toEqual([
      ['owner', 2],
      ['lawUs', 1.5875],
    ]);
    expect(at({ ...own, roadLaw: 'none' })).toEqual([['owner', 2]]);
    expect(at({ leastDepth: mm('1'), roadLaw: 'eu' })).toEqual([
      ['lawEu', 1.6],
      ['owner', 1],
    ]);
    expect(floors(season('9'), { ...pads, leastDepth: mm('4') })).toEqual([['owner', 4]]);
  });

  it('says what a circuit day should begin with: the owner’s value, half of new, or 6 mm', () => {
    const at = (more: object) => wearOf(season('9'), { ...pads, ...more } as GearDraft).startOfDay;
    expect(at({})).toEqual({ mm: 6, whose: 'practice' });
    expect(at({ newDepth: mm('17') })).toEqual({ mm: 8.5, whose: 'practice' });
    expect(at({ startDepth: mm('7') })).toEqual({ mm: 7, whose: 'owner' });
  });

  it('follows discs that are weighed, and knows no minimum of them', () => {
    const weighed = (on: string, massG: number): Drafted => ({
      kind: 'measure',
      component: 'set',
      on,
      time: '18:00',
      discs: [{ corner: 'frontLeft', massG }],
    });
    const found = first(
      [
        { ...fit, on: '2026-03-01' },
        weighed('2026-03-01', 5300),
        day('2026-03-02', 10),
        weighed('2026-03-03', 5250),
      ],
      { ...pads, sort: 'discs' },
    );
    expect(found).toMatchObject({ unit: 'g', floors: [] });
    expect(found.rate?.likely).toBeCloseTo(5, 9);
  });
});

describe('wearAfter()', () => {
  const wear = wearOf(season('11', '10', '9', '8'));
  const after = (sessions: number) => wearAfter(wear, { ...NO_USE, sessions })[0];

  it('gives a likely and a cautious value after so much further use', () => {
    expect(after(4)).toMatchObject({ where: 'front left, inner', likely: expect.closeTo(7, 9) });
    expect(after(4)?.cautious).toBeLessThan(6.9);
    expect(after(0)?.cautious).toBeGreaterThan(after(4)?.cautious ?? 0);
    expect(wearAfter(wear, { sessions: 0, roadKm: 8000, launches: 0 })[0]?.likely).toBeCloseTo(
      7,
      9,
    );
  });

  it('knows nothing where there is no rate', () => {
    const single = wearOf(season('9'));
    expect(wearAfter(single, { ...NO_USE, sessions: 1 })[0]).toMatchObject({
      likely: null,
      cautious: null,
    });
    expect(wearAfter(single, NO_USE)[0]).toMatchObject({ likely: 9, cautious: 9 });
    expect(() => after(-1)).toThrow(RangeError);
  });
});
