import { describe, expect, it, test } from 'vitest';
import { carBook, km, type Line } from '../../test/car-book.ts';
import { noOilYet } from '../../test/no-oil-yet.ts';
import type { BookDraft } from '../log/book.ts';
import type { CarOil } from '../oil/oil-answer.ts';
import { analyseBook } from '../readers/index.ts';
import {
  fromMaxWords,
  levelBandWords,
  likelyLevelWords,
  likelyStop,
} from './likely-level-words.ts';
import {
  LITRES_PER_1000_KM,
  oilUseWords,
  rateIn,
  US_QUARTS_PER_1000_MI,
} from './oil-rate-words.ts';
import {
  likelyLevelSentence,
  nextLookSentence,
  type OilFacts,
  offProcedureSentence,
  oilUseSentence,
  riseSentence,
  spanSentence,
} from './oil-sentences.ts';
import { oilStopOf, oilStopSentence, unexplainedRiseSentence } from './oil-stop-sentence.ts';

const facts: OilFacts = {
  ...LITRES_PER_1000_KM,
  unit: 'km',
  asOf: '2026-06-15',
  drySump: false,
};
const oilOf = (lines: readonly Line[], profile: BookDraft['car']['profile'] = { oilSpanL: 1 }) =>
  analyseBook(carBook(lines, { profile })).oil;
const check = (on: string, odo: number, fraction: number): Line => ({
  kind: 'oilCheck',
  on,
  odometer: km(odo),
  level: { how: 'fraction', fraction, step: 0.25 },
});
/** What somebody types in a spring: nine looks, a top-up, a change, one more look. */
const TWELVE: Line[] = [
  check('2026-03-01', 10_000, 1),
  check('2026-03-10', 10_400, 0.75),
  check('2026-03-20', 10_900, 0.75),
  check('2026-03-31', 11_300, 0.5),
  check('2026-04-10', 11_800, 0.25),
  {
    kind: 'oilTopUp',
    on: '2026-04-11',
    odometer: km(11_820),
    volume: { text: '0.5', unit: 'l' },
  },
  check('2026-04-20', 12_200, 0.75),
  check('2026-05-01', 12_700, 0.5),
  {
    kind: 'oilChange',
    on: '2026-05-03',
    odometer: km(12_750),
    filterRenewed: true,
    levelAfter: { how: 'fraction', fraction: 1, step: 0.25 },
  },
  check('2026-05-20', 13_200, 0.75),
  check('2026-06-01', 13_700, 0.75),
  check('2026-06-12', 14_150, 0.5),
];
const like = (more: Partial<CarOil>): CarOil => ({
  ...oilOf(TWELVE),
  ...more,
});
const at = (p10: number, p50: number, p90: number) => ({
  spanL: 1,
  level: { ...noOilYet().level, p10, p50, p90 },
});

test.each([
  [0.44, 'a little under half'],
  [0.52, 'half'],
  [0.6, 'a little over half'],
  [0.02, 'at MIN'],
  [-0.05, 'at MIN'],
  [-0.2, 'below MIN'],
  [0.9, 'a little under MAX'],
  [1.2, 'over MAX'],
])('likelyStop() calls %s "%s"', (fraction, words) => {
  expect(likelyStop(fraction)).toBe(words);
});

test.each([
  [0.2, 0.71, 'between a quarter and three quarters'],
  [0.45, 0.55, 'close to half'],
  [-0.4, 0.1, 'at MIN or below'],
  [0.95, 1.3, 'at MAX or over'],
  [0.7, 1.3, 'from three quarters to over MAX'],
])('levelBandWords() between %s and %s', (low, high, words) => {
  expect(levelBandWords(low, high)).toBe(words);
});

test('fromMaxWords() says litres or quarts, and where there is nothing to say that it is at the mark', () => {
  expect(fromMaxWords(-0.41, 'l')).toBe('0.4 L below MAX');
  expect(fromMaxWords(-0.95, 'usQt')).toBe('1 US qt below MAX');
  expect(fromMaxWords(0.02, 'l')).toBe('at MAX');
  expect(fromMaxWords(0.3, 'l')).toBe('0.3 L above MAX');
});

test('likelyLevelWords() says stop, band and litres', () => {
  expect(likelyLevelWords(at(-0.8, -0.56, -0.29), 'l')).toBe(
    'likely a little under half, between a quarter and three quarters; 0.6 L below MAX',
  );
});

test('rateIn() turns L/1,000 km into US qt/1,000 mi', () => {
  // 1 US qt/1,000 mi = 0.946352946 L / 1,609.344 km
  expect(rateIn(0.588036458333, US_QUARTS_PER_1000_MI)).toBeCloseTo(1, 11);
});

describe('oilUseWords()', () => {
  const rates = (more: Partial<CarOil>) =>
    like({
      roadRate: { ...noOilYet().roadRate, p10: 0.2, p50: 0.333, p90: 0.45 },
      hardRate: { ...noOilYet().hardRate, p10: 0.6, p50: 0.8, p90: 1.12, fromPrior: false },
      ...more,
    });

  it('keeps road and hard use apart', () => {
    expect(oilUseWords(rates({}), LITRES_PER_1000_KM)).toBe(
      'about 0.33 L per 1,000 km on the road, 0.2 to 0.45; about 0.8 in hard use, 0.6 to 1.1',
    );
    expect(oilUseWords(rates({}), US_QUARTS_PER_1000_MI)).toBe(
      'about 0.57 US qt per 1,000 mi on the road, 0.34 to 0.77; about 1.4 in hard use, 1 to 1.9',
    );
  });

  it('shows nothing that was never logged, and no rate of too few readings', () => {
    const hardRate = { ...noOilYet().hardRate, fromPrior: true };
    expect(oilUseWords(rates({ hardRate }), LITRES_PER_1000_KM)).not.toContain('hard use');
    expect(oilUseWords(rates({ status: 'none' }), LITRES_PER_1000_KM)).toBeNull();
    expect(oilUseWords(oilOf([]), LITRES_PER_1000_KM)).toBeNull();
  });
});

describe('a person’s twelve entries', () => {
  it('give a level and a rate', () => {
    const oil = oilOf(TWELVE);
    expect(likelyLevelSentence(oil, facts)).toMatch(
      /^Likely .*, (between .* and .*|close to .*); 0\.\d L below MAX\.( Rough, so far\.)?$/,
    );
    expect(oilUseSentence(oil, facts)).toMatch(
      /^Uses about 0\.\d+ L per 1,000 km on the road, 0\.\d+ to \d\.\d+\./,
    );
    expect(oil.roadRate.p50).toBeGreaterThan(0.3);
    expect(oil.roadRate.p50).toBeLessThan(0.8);
  });

  it('say what would help where there are too few', () => {
    expect(likelyLevelSentence(oilOf([]), facts)).toContain('Two readings by the same procedure');
    expect(likelyLevelSentence(oilOf(TWELVE.slice(0, 1)), facts)).toContain('One more reading');
    const two = oilOf(TWELVE.slice(0, 2));
    expect(two.status).toBe('none');
    expect(likelyLevelSentence(two, facts)).toContain('Two more readings by the same procedure');
    expect(likelyLevelSentence(two, facts)).not.toMatch(/\d L/);
    expect(oilUseSentence(two, facts)).toBeNull();
    expect(two.nextLook).toEqual({ km: null, atOdometerKm: null, by: '2026-06-15' });
  });
});

describe('what cannot wait', () => {
  const none: Line = { kind: 'oilCheck', on: '2026-06-14', level: { how: 'none' } };

  it('says that there is none on the stick at once, whatever the ledger says', () => {
    const full = { ...TWELVE.at(-1), level: { how: 'fraction', fraction: 1 } } as Line;
    const oil = oilOf([...TWELVE, full, none]);
    expect(oilStopOf(oil)).toBe('none');
    expect(oilStopSentence(oil)).toBe(
      'No oil on the stick when last read, 14 June 2026: do not start it. Look by the manual’s procedure and top up first.',
    );
    expect(nextLookSentence(oil, facts)).toBe('Look before driving.');
  });

  it('is quiet once oil was poured in', () => {
    const poured: Line = {
      kind: 'oilTopUp',
      on: '2026-06-14',
      time: '18:00',
      volume: { text: '0.5', unit: 'l' },
    };
    const low: Line = { ...none, time: '17:00', level: { how: 'fraction', fraction: 0 } };
    expect(oilStopOf(oilOf([...TWELVE, low]))).toBe('low');
    expect(oilStopOf(oilOf([...TWELVE, low, poured]))).toBeNull();
  });

  it('says low where the last reading was good but much was driven', () => {
    const oil = oilOf([...TWELVE, { kind: 'odometer', on: '2026-06-14', odometer: km(15_600) }]);
    expect(oil.readLow).toBeNull();
    expect(oilStopSentence(oil)).toBe('The oil may be below MIN: look before driving.');
  });

  it('says that there may be too much where it was poured in on a good level', () => {
    const much: Line = { kind: 'oilTopUp', on: '2026-06-14', volume: { text: '2', unit: 'l' } };
    expect(oilStopSentence(oilOf([...TWELVE, much]))).toMatch(/^By what was poured in there may/);
  });

  it('says too much', () => {
    const oil = oilOf([...TWELVE, { kind: 'oilCheck', on: '2026-06-14', level: { how: 'over' } }]);
    expect(oilStopSentence(oil)).toMatch(/^Too much oil: drain it/);
  });

  it('asks nothing of a car whose oil nobody ever looked at', () => {
    expect(oilStopOf(oilOf([{ kind: 'odometer', on: '2026-06-14', odometer: km(9000) }]))).toBe(
      null,
    );
  });
});

test('offProcedureSentence() flags a dry sump that was read cold', () => {
  const cold: Line = {
    kind: 'oilCheck',
    on: '2026-06-13',
    level: { how: 'fraction', fraction: 0.1, step: 0.25 },
    condition: { state: 'cold' },
  };
  const dry = oilOf([...TWELVE, cold], { oilSpanL: 1, sump: 'dry' });
  expect(offProcedureSentence(dry, { ...facts, drySump: true })).toBe(
    'Last read cold on a dry sump, which shows falsely low: listed, not counted beyond the first. Never add oil on such a reading.',
  );
  expect(dry.lowNow).toBe(false);
  expect(offProcedureSentence(oilOf(TWELVE), facts)).toBeNull();
});

describe('nextLookSentence()', () => {
  const next = (nextLook: CarOil['nextLook']) =>
    nextLookSentence(like({ nextLook, lowNow: false }), facts);

  it('says distance, odometer and day, whichever comes first', () => {
    expect(next({ km: 612, atOdometerKm: 42_187, by: '2026-06-19' })).toBe(
      'Look again within 610 km, by the odometer at 42,180 km, or by Fri 19 June.',
    );
    expect(next({ km: 612, atOdometerKm: null, by: '2026-06-15' })).toBe(
      'Look today, as every week in use; at the latest within 610 km.',
    );
    expect(next({ km: null, atOdometerKm: null, by: '2026-06-19' })).toBe(
      'Look again by Fri 19 June, as every week in use.',
    );
  });

  it('asks for no weekly look of a car that is laid up', () => {
    expect(next({ km: 612, atOdometerKm: 42_187, by: null })).toBe(
      'Not in use: nobody need look every week. Look before it is driven again, then within 610 km, by the odometer at 42,180 km.',
    );
  });

  it('counts on from the odometer by what is expected since it was read', () => {
    const { nextLook } = oilOf(TWELVE);
    expect(nextLook.by).toBe('2026-06-19');
    const driven = (nextLook.atOdometerKm ?? 0) - (nextLook.km ?? 0) - 14_150;
    // three days of some 40 km
    expect(driven).toBeGreaterThan(20);
    expect(driven).toBeLessThan(300);
  });
});

/** Every 500 km and ten days from a year before; litres per 1,000 km. */
function readings(count: number, rateAt: (index: number) => number): Line[] {
  const lines: Line[] = [];
  let level = 1;
  for (let index = 0; index < count; index += 1) {
    const day = new Date(Date.UTC(2025, 5, 1 + 9 * index)).toISOString().slice(0, 10);
    if (index > 0) level -= 0.5 * rateAt(index);
    const topUp = level < 0.4;
    lines.push({
      kind: 'oilTopUp',
      on: day,
      odometer: km(10_000 + 500 * index),
      levelBefore: { how: 'fraction', fraction: Math.round(level * 8) / 8, step: 0.125 },
      ...(topUp ? { volume: { text: '0.5', unit: 'l' } } : {}),
      ...(topUp ? {} : { volume: { text: '0.01', unit: 'l' } }),
    });
    if (topUp) level += 0.5;
  }
  return lines;
}

describe('riseSentence()', () => {
  const risenNotice = ({ notices }: CarOil) => notices.find(({ kind }) => kind === 'useRisen');
  const risen = oilOf(readings(36, (index) => (index < 24 ? 0.2 : 0.7)));

  it('says since when, from how much to how much, and what to look at first', () => {
    expect(risen.alerts.at(-1)?.closedAtEntry).toBeUndefined();
    expect(riseSentence(risen, facts)).toMatch(
      /^Uses more oil than it did: by the log likely up since about \d+ (December 2025|January|February), from about 0\.\d+ to 0\.\d+ L per 1,000 km on the road\. First: is a session or a top-up missing from the log\?$/,
    );
    expect(risenNotice(risen)).toMatchObject({
      id: 'oil:useRisen:car:e25',
      entry: 'e25',
      answer: null,
    });
  });

  it('asks no more once somebody said that it really uses more', () => {
    const notice = risenNotice(risen);
    const lines = readings(36, (index) => (index < 24 ? 0.2 : 0.7));
    const oil = oilOf([
      ...lines,
      {
        kind: 'answer',
        on: '2026-06-14',
        notice: notice?.id ?? '',
        answer: 'It really uses more',
      },
    ]);
    expect(risenNotice(oil)).toMatchObject({ answer: { words: 'It really uses more' } });
    expect(riseSentence(oil, facts)).not.toContain('missing');
  });

  it('is quiet of a steady car, and says what is worth watching', () => {
    expect(riseSentence(oilOf(readings(36, () => 0.4)), facts)).toBeNull();
    expect(riseSentence(like({ riseProbability: 0.5, alerts: [] }), facts)).toMatch(/watching/);
    expect(riseSentence(like({ riseProbability: 0.49, alerts: [] }), facts)).toBeNull();
  });
});

test('unexplainedRiseSentence() says how much and what it may be', () => {
  const unexplainedRise = { entry: 'e', firstEntry: 'd', litres: 0.83 };
  expect(unexplainedRiseSentence({ unexplainedRise }, 'l')).toBe(
    '0.8 L more oil than there can be: an unlogged top-up, or fuel or coolant in the oil? Smell and look at it, and ask before it is used hard.',
  );
  expect(unexplainedRiseSentence({ unexplainedRise: null }, 'l')).toBeNull();
});

test('spanSentence() says what is assumed, and nothing where it is on record', () => {
  expect(spanSentence(oilOf(TWELVE, {}), facts)).toMatch(/taken to be 1 L/);
  expect(spanSentence(oilOf(TWELVE), facts)).toBeNull();
});

test('no sentence of the oil carries a word of statistics', () => {
  const said = [oilOf(TWELVE), oilOf([]), oilOf(readings(36, (i) => (i < 24 ? 0.2 : 0.7)))].flatMap(
    (oil) => [
      likelyLevelSentence(oil, facts),
      oilUseSentence(oil, facts),
      riseSentence(oil, facts),
      nextLookSentence(oil, facts),
    ],
  );
  expect(said.join(' ')).not.toMatch(/P10|P50|probab|hypothes|prior|median|sd\b|percent|%/i);
});
