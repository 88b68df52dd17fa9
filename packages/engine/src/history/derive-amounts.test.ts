import { describe, expect, it } from 'vitest';
import { deriveAmounts, type GivenAmounts } from './derive-amounts.ts';

const derive = (useClass: GivenAmounts['useClass'], given: Partial<GivenAmounts> = {}) =>
  deriveAmounts({
    useClass,
    distanceKm: null,
    hours: null,
    sessions: null,
    launches: null,
    ...given,
  });

describe('deriveAmounts()', () => {
  it.each([
    ['circuit', { distanceKm: 190, hours: 1.8, sessions: 5 }, 190, 1.8],
    ['circuit', { hours: 2, sessions: 5 }, 220, 2],
    ['circuit', { sessions: 5 }, 200, 2],
    ['circuit', { distanceKm: 165 }, 165, 1.5],
    ['circuit', { launches: 10 }, 8, 0],
    ['autocross', { sessions: 4 }, 20, 0.4],
    ['autocross', { hours: 2 }, 0, 2],
    ['strip', { launches: 6 }, 4.8, 0],
    ['strip', { sessions: 6, launches: 3 }, 12, 0.3],
    ['touring', { sessions: 3 }, 750, 0],
    ['road', {}, 0, 0],
    ['road', { distanceKm: 90 }, 90, 0],
    ['circuit', { distanceKm: 0, sessions: 5 }, 0, 2],
  ] as const)('takes %s of %j for %d km and %d h', (useClass, given, km, hours) => {
    const amounts = derive(useClass, given);
    expect(amounts.distanceKm).toBeCloseTo(km, 9);
    expect(amounts.hours).toBeCloseTo(hours, 9);
  });

  it('marks what was derived and leaves what was given', () => {
    expect(derive('circuit', { hours: 2 })).toMatchObject({
      distanceEstimated: true,
      hoursEstimated: false,
    });
    expect(derive('circuit', { distanceKm: 10 })).toMatchObject({
      distanceEstimated: false,
      hoursEstimated: true,
    });
  });

  it('leaves the hours of road use open', () => {
    expect(derive('touring', { distanceKm: 90 }).hoursOpen).toBe(true);
    expect(derive('touring', { distanceKm: 90, hours: 2 }).hoursOpen).toBe(false);
    expect(derive('circuit', { distanceKm: 90 }).hoursOpen).toBe(false);
  });

  it('never derives sessions or launches', () => {
    expect(derive('strip', { distanceKm: 4 })).toMatchObject({ sessions: 0, launches: 0 });
  });
});
