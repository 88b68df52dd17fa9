import { describe, expect, it } from 'vitest';
import { entriesOf, gearBook, km } from '../../test/gear-book.ts';
import { analyseGear } from './analyse-gear.ts';

const tyres = { kind: 'component', name: 'Track set', sort: 'tyreSet', condition: 'new' } as const;
const known = (amount: number) => ({ amount, known: true });
const fit = { kind: 'fit', component: 'set' } as const;

describe('analyseGear() of a set moved between two cars', () => {
  // By hand: on A from 1,000 to 1,600 km with 3 sessions of 90 km in all: 600 km, 330 of them road
  // (600 - 270). On B from 50,000 to 50,400 km with 2 sessions of 60 km in all: 400 km. What A did before
  // (1,000 km at the start) and after (to 2,000), and B before (49,000 to 50,000), does not count.
  const entries = entriesOf([
    { kind: 'odometer', on: '2026-03-01', car: 'a', odometer: km(800) },
    { kind: 'odometer', on: '2026-03-01', car: 'b', odometer: km(49_000) },
    {
      ...fit,
      on: '2026-04-01',
      change: 'on',
      car: 'a',
      odometer: km(1000),
      positions: ['front', 'rear'],
    },
    {
      kind: 'session',
      on: '2026-04-05',
      car: 'a',
      use: 'circuit',
      sessions: 3,
      distance: km(90 * 3),
    },
    { ...fit, on: '2026-04-11', change: 'moved', car: 'b', odometer: km(50_000), time: '12:00' },
    { kind: 'odometer', on: '2026-04-11', car: 'a', odometer: km(1600), time: '11:00' },
    {
      kind: 'session',
      on: '2026-04-20',
      car: 'b',
      use: 'circuit',
      sessions: 2,
      distance: km(60 * 2),
    },
    { ...fit, on: '2026-05-01', change: 'off', car: 'b', odometer: km(50_400) },
    { kind: 'odometer', on: '2026-05-20', car: 'a', odometer: km(2000) },
    { kind: 'odometer', on: '2026-05-20', car: 'b', odometer: km(52_000) },
  ]);

  it('sums both parts and nothing else', () => {
    const { life, analysis } = analyseGear(gearBook({ gear: tyres, asOf: '2026-06-01', entries }));
    expect(life?.distanceKm).toEqual(known(600 + 400));
    expect(life?.sessions).toEqual(known(5));
    expect(life?.fitted).toBeNull();
    expect(life?.windows.map(({ car, start, end }) => [car, start, end])).toEqual([
      ['a', '2026-04-01', '2026-04-11'],
      ['b', '2026-04-11', '2026-05-01'],
    ]);
    expect(analysis.flags).toEqual([]);
  });
});
