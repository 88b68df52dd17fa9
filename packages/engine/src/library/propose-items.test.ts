import { describe, expect, it } from 'vitest';
import type { CarProfile } from '../log/book.ts';
import { gearInput } from '../log/gear.ts';
import { itemInput, type UseClass } from '../log/item.ts';
import type { Proposal } from './proposal.ts';
import { proposeGearItems } from './propose-gear-items.ts';
import { proposeFollowUps, proposeItems } from './propose-items.ts';
import { trackDays, trackDaysByMeasure } from './track-days.ts';

const PROFILES: CarProfile[] = [
  {},
  { induction: 'forced', gearbox: 'manual', wheelFixing: 'bolt' },
  { sump: 'dry', induction: 'natural', wheelFixing: 'centreLock', discMaterial: 'carbonCeramic' },
  { drive: 'electric', airSuspension: true },
  { drive: 'hybrid', fuel: 'diesel', gearbox: 'dual clutch', wheelFixing: 'stud' },
];
const USES: UseClass[][] = [
  [],
  ['road'],
  ['circuit'],
  ['road', 'touring', 'circuit', 'strip', 'autocross'],
  ['autocross'],
  ['strip'],
];
const GEAR = [
  ...['tyreSet', 'wheelSet', 'pads', 'discs', 'clutch', 'engine', 'gearbox', 'other'].map(
    (sort) => ({
      kind: 'component',
      name: 'x',
      sort,
      condition: 'new',
      dateCode: '0120',
    }),
  ),
  ...['lift', 'jack', 'stands', 'torqueWrench', 'extinguisher', 'trailer', 'other'].map((sort) => ({
    kind: 'equipment',
    name: 'x',
    sort,
  })),
  { kind: 'person', name: 'x' },
].map((draft) => gearInput.parse(draft));

const forCars = PROFILES.flatMap((profile) =>
  (['km', 'mi'] as const).flatMap((unit) =>
    USES.map((uses) => ({
      proposals: proposeItems(profile, unit, uses),
      followUps: proposeFollowUps(profile, unit, uses),
      uses,
    })),
  ),
);
const forGear = GEAR.map((gear) => proposeGearItems(gear));
const repeated = [...forCars.map(({ proposals }) => proposals), ...forGear];
const all = [...repeated, ...forCars.map(({ followUps }) => followUps)];

const keys = (proposals: Proposal[]) => proposals.map(({ key }) => key);
const find = (proposals: Proposal[], key: string) => {
  const found = proposals.find((it) => it.key === key);
  if (found === undefined) throw new Error(`no proposal ${key}`);
  return found;
};
const limit = (proposals: Proposal[], key: string, measure: string) =>
  find(proposals, key).item.limits.find((it) => it.measure === measure)?.value;

/** How far distance, hours and sessions of one item may lie apart: see the note at the engine oil. */
const APART = 0.1;

describe('every proposal', () => {
  it('is an item as a form would send it, or asks for the one thing that is missing', () => {
    expect(all.flat().length).toBeGreaterThan(500);
    for (const { askManual, item, key } of all.flat()) {
      expect(item.limits.length === 0, key).toBe(askManual);
      const limits = askManual ? [{ measure: 'months', value: 12 }] : item.limits;
      expect(itemInput.safeParse({ ...item, limits }).error, key).toBeUndefined();
    }
  });

  it('has a key of its own, a reason in whole sentences, and says whose value it is', () => {
    for (const proposals of all) expect(new Set(keys(proposals)).size).toBe(proposals.length);
    for (const { why, item, askManual, key } of all.flat()) {
      expect(why, key).toMatch(/^[A-Z\d].*[.]$/);
      expect(why).not.toMatch(/!|severe|\bready\b/i);
      expect(item.source === undefined, key).toBe(askManual);
    }
  });

  it('lasts 1 to 30 track days where circuits use it up, one-off looks left aside', () => {
    const days = repeated.flat().flatMap(({ item, key }) => {
      const lasts = trackDays(item);
      return lasts === null ? [] : [{ key, lasts }];
    });
    expect(new Set(days.map(({ key }) => key)).size).toBeGreaterThan(12);
    for (const { key, lasts } of days) {
      expect(lasts, key).toBeGreaterThanOrEqual(1);
      expect(lasts, key).toBeLessThanOrEqual(30);
    }
  });

  it('lasts as long by distance as by hours and by sessions', () => {
    let compared = 0;
    for (const { item, key } of repeated.flat()) {
      const days = trackDaysByMeasure(item).map((it) => it.days);
      if (days.length < 2) continue;
      compared += 1;
      const most = Math.max(...days);
      expect((most - Math.min(...days)) / most, key).toBeLessThanOrEqual(APART);
    }
    expect(compared).toBeGreaterThan(20);
  });
});

describe('proposeItems()', () => {
  it('asks an electric car for nothing that burns, and sends high voltage to the trained', () => {
    const electric = proposeItems({ drive: 'electric' }, 'km', ['circuit']);
    for (const key of ['engineOil', 'oilFilter', 'sparkPlugs', 'timingBelt', 'clutchFluid'])
      expect(keys(electric)).not.toContain(key);
    expect(find(electric, 'highVoltage').why).toMatch(/trained/);
    expect(keys(proposeItems({ drive: 'hybrid' }, 'km', []))).toEqual(
      expect.arrayContaining(['engineOil', 'highVoltage']),
    );
  });

  it('halves the passes of the oil nearly, and the distance of the plugs, under forced induction', () => {
    const forced = proposeItems({ induction: 'forced' }, 'km', ['strip']);
    const natural = proposeItems({ induction: 'natural' }, 'km', ['strip']);
    expect(limit(forced, 'engineOil', 'launches')).toBe(25);
    expect(limit(natural, 'engineOil', 'launches')).toBe(40);
    expect(limit(forced, 'sparkPlugs', 'km')).toBe(40_000);
    expect(limit(natural, 'sparkPlugs', 'km')).toBe(80_000);
  });

  it('counts hours and sessions for those who drive circuits, launches for the drag strip', () => {
    const measures = (uses: UseClass[]) =>
      find(proposeItems({}, 'mi', uses), 'engineOil').item.limits.map(({ measure }) => measure);
    expect(measures([])).toEqual(['km', 'months']);
    expect(measures(['circuit'])).toEqual(['km', 'months', 'hours', 'sessions']);
    expect(measures(['strip'])).toEqual(['km', 'months', 'launches']);
    expect(limit(proposeItems({}, 'mi', []), 'engineOil', 'km')).toBe(7500);
  });

  it('renews brake fluid yearly for circuits, or from the first session of a road car on', () => {
    const circuit = find(proposeItems({}, 'km', ['circuit']), 'brakeFluid').item;
    const road = find(proposeItems({}, 'km', ['road']), 'brakeFluid').item;
    expect(circuit.limits[0]).toEqual({ measure: 'months', value: 12 });
    expect(circuit.severe).toBeUndefined();
    expect(road.limits[0]).toEqual({ measure: 'months', value: 24 });
    expect(road.severe?.limits).toEqual([{ measure: 'months', value: 12 }]);
    expect(circuit.triggers).toEqual({ incidents: ['softPedal'] });
  });

  it('speaks of the sump, the wheels and the discs the car has', () => {
    const car = proposeItems(
      {
        sump: 'dry',
        wheelFixing: 'centreLock',
        discMaterial: 'carbonCeramic',
        airSuspension: true,
      },
      'km',
      ['circuit'],
    );
    expect(keys(car)).toEqual(expect.arrayContaining(['drySump', 'discsWeigh', 'airSuspension']));
    expect(find(car, 'wheelFasteners').item.name).toBe('Centre-lock nuts, torque');
    expect(find(car, 'wheelFasteners').item.triggers).toEqual({ wheelsOff: true });
    expect(keys(proposeItems({}, 'km', []))).not.toContain('drySump');
  });

  it('leaves out the clutch where there is no pedal', () => {
    expect(keys(proposeItems({ gearbox: 'Automatic' }, 'km', []))).not.toContain('clutchFluid');
    expect(keys(proposeItems({ gearbox: 'manual' }, 'km', []))).toContain('clutchFluid');
    expect(find(proposeItems({}, 'km', []), 'clutchFluid').why).toMatch(/^Only where/);
  });
});

describe('proposeFollowUps()', () => {
  it('are done once, and look at the wheels within 80 to 160 km', () => {
    for (const { followUps } of forCars)
      expect(followUps.every(({ item }) => item.once === true)).toBe(true);
    expect(limit(proposeFollowUps({}, 'km', []), 'wheelRecheck', 'km')).toBe(100);
    expect(limit(proposeFollowUps({}, 'mi', []), 'wheelRecheck', 'km')).toBe(60);
  });
});

describe('proposeGearItems()', () => {
  const of = (draft: object) => proposeGearItems(gearInput.parse({ name: 'x', ...draft }));

  it('knows the tools that a publication speaks of', () => {
    const wrench = of({ kind: 'equipment', sort: 'torqueWrench' });
    expect(limit(wrench, 'torqueWrench', 'months')).toBe(12);
    expect(wrench[0]?.item.source).toBe('ISO 6789');
    const jack = of({ kind: 'equipment', sort: 'jack' });
    expect(limit(jack, 'jackInspection', 'months')).toBe(6);
    expect(jack[0]?.item.source).toBe('29 CFR 1910.244');
  });

  it('asks a person for the dates on their labels, and puts none there itself', () => {
    const person = of({ kind: 'person' });
    expect(keys(person)).toEqual(['helmet', 'harness', 'neckRestraint', 'licence']);
    for (const it of person) expect(it).toMatchObject({ askManual: true, ask: 'label' });
  });

  it('takes tyres off ten years from their date code, and asks for the code where there is none', () => {
    const set = { kind: 'component', sort: 'tyreSet', condition: 'used' };
    expect(limit(of({ ...set, dateCode: '0120' }), 'tyreAge', 'date')).toBe('2030-01-05');
    expect(find(of(set), 'tyreAge')).toMatchObject({ askManual: true, ask: 'label' });
    expect(find(of({ ...set, dateCode: '129' }), 'tyreAge').askManual).toBe(true);
  });
});
