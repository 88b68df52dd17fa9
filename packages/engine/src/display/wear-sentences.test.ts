import { describe, expect, it } from 'vitest';
import { type Drafted, entriesOf, gearBook, km } from '../../test/gear-book.ts';
import { analyseGear } from '../gear/analyse-gear.ts';
import type { ComponentWear } from '../gear/wear-rate/result.ts';
import type { GearDraft } from '../log/gear.ts';
import { countedWords, wearSentences } from './wear-sentences.ts';
import { leftWords, rateWords, useWords } from './wear-words.ts';
import { wearFirst, wearToDo } from './worst-place.ts';

const mm = (text: string) => ({ text, unit: 'mm' as const });
const pads: GearDraft = { kind: 'component', name: 'Pads', sort: 'pads', condition: 'new' };
const tyres: GearDraft = { ...pads, name: 'Set', sort: 'tyreSet' };
const onApril = (index: number) => `2026-04-${String(2 * index + 1).padStart(2, '0')}`;
const fitted: Drafted = {
  kind: 'fit',
  component: 'set',
  change: 'on',
  car: 'a',
  on: '2026-03-01',
};
const day = (on: string, sessions = 4): Drafted => ({
  kind: 'session',
  use: 'circuit',
  on,
  time: '10:00',
  car: 'a',
  sessions,
});
const padsAt = (on: string, inner: string, corner: 'frontLeft' | 'frontRight' = 'frontLeft') =>
  ({
    kind: 'measure',
    component: 'set',
    on,
    time: '18:00',
    pads: [{ corner, inner: mm(inner) }],
  }) satisfies Drafted;
const treadAt = (on: string, depth: string): Drafted => ({
  kind: 'measure',
  component: 'set',
  on,
  time: '18:00',
  tread: [{ corner: 'rearLeft', groove: 'outer', depth: mm(depth) }],
});
/** Four sessions before each measurement. */
const season = (of: (on: string, value: string) => Drafted, ...values: string[]): Drafted[] => [
  fitted,
  ...values.flatMap((value, index) => [day(onApril(index)), of(onApril(index), value)]),
];

function wearOf(drafts: readonly Drafted[], gear: GearDraft = pads): ComponentWear {
  const { life } = analyseGear(gearBook({ gear, asOf: '2026-06-01', entries: entriesOf(drafts) }));
  if (life?.wear == null) throw new Error('nothing was measured');
  return life.wear;
}
const said = (drafts: readonly Drafted[], gear?: GearDraft) =>
  wearSentences(wearOf(drafts, gear), 'km');

describe('wearSentences()', () => {
  it('says value, rate and use left in one sentence', () => {
    expect(said([...season(padsAt, '11', '10', '9', '8'), day('2026-05-01', 2)])).toEqual([
      'Front left inner pad likely 7.5 mm now, about 0.25 mm a session; 3 mm (common practice) in about 18 sessions, could be as few as 13.',
    ]);
  });

  it('says a rate of two points is rough', () => {
    const [first, second] = said(season(padsAt, '9'), { ...pads, newDepth: mm('11') });
    expect(first).toMatch(/likely 9 mm now, about 0\.5 mm a session; 3 mm .* in about 12 sessions/);
    expect(second).toBe('Rough, so far: measure again after more use.');
  });

  it('shows the law beside the owner’s own value, each with whose it is', () => {
    const own = { ...tyres, leastDepth: mm('2'), roadLaw: 'us' as const };
    expect(said(season(treadAt, '8', '7', '6', '5'), own)[0]).toMatch(
      /2 mm \(your own value\) in about 1[12] sessions, could be as few as \d+; 2\/32 in \(1\.59 mm; law, US\) in about 13 sessions/,
    );
  });

  it('says what a place has fallen below: the law before the owner', () => {
    const at = (value: string, more = {}) =>
      said([fitted, treadAt('2026-04-01', value)], { ...tyres, leastDepth: mm('3'), ...more })[1];
    expect(at('2.9')).toBe('Below your own least, 3 mm.');
    expect(at('1.59')).toMatch(/legal floor of the EU, 1\.6 mm; just above 2\/32 in/);
    expect(at('1.5')).toBe('Below the legal floor: 1.6 mm in the EU, 2/32 in in the US.');
    expect(at('1.59', { roadLaw: 'us' })).toBe('Below your own least, 3 mm.');
    expect(at('1.5', { roadLaw: 'us' })).toBe('Below the legal floor of the US, 2/32 in.');
    expect(at('1.59', { roadLaw: 'eu' })).toBe('Below the legal floor of the EU, 1.6 mm.');
    expect(at('3')).toBeUndefined();
    const thin = said([fitted, padsAt('2026-04-01', '2.5')]);
    expect(thin).toContain('Below the 3 mm of common practice.');
  });

  it('says below where the last measurement is, though the line lies above', () => {
    expect(said(season(padsAt, '7', '6', '5.5', '2.9')).join(' ')).toContain('Below the 3 mm');
  });

  it('says what would help where there is one measurement', () => {
    expect(said(season(padsAt, '9'))).toEqual([
      'Front left inner pad 9 mm, measured 1 April 2026; no rate yet: measure once more after some use.',
    ]);
    expect(said([...season(padsAt, '9'), day('2026-05-01', 2)])[0]).toContain('2 sessions ago');
    expect(said([padsAt('2026-04-01', '9')])[0]).toMatch(/fit it to a car, so that its use/);
    expect(said([...season(padsAt, '9'), padsAt('2026-04-09', '9')])[0]).toContain(
      'too little use between the measurements: measure once more after some use',
    );
  });

  it('says that values rise, with both of them and how to mend it', () => {
    const [sentence] = said(season(padsAt, '9', '8', '11'));
    expect(sentence).toMatch(/^Front left inner pad rose from 8 mm \(3 April 2026\) to 11 mm/);
    expect(sentence).toMatch(/Amend the measurement, or record the fit as new/);
    expect(said(season(treadAt, '5', '7'), tyres)[0]).toContain('wheels that changed corners');
    expect(said(season(padsAt, '12'), { ...pads, newDepth: mm('10') })[0]).toContain('10 mm (new)');
  });

  it('says that no wear is to be seen, and how much use there is at least', () => {
    expect(said(season(padsAt, '9', '9', '9'))[0]).toMatch(
      /no wear to be seen yet; 3 mm \(common practice\) not before about \d+ sessions\.$/,
    );
  });

  it('speaks of the place that runs out first, and of a thinner one without a rate', () => {
    const both = [...season(padsAt, '11', '10', '9', '8'), padsAt('2026-04-07', '7', 'frontRight')];
    const starts = said(both).map((it) => it.split(' ').slice(0, 2).join(' '));
    expect(starts).toEqual(['Front left', 'Front right']);
  });

  it('is careful where some use is not in the log', () => {
    const used = { ...pads, condition: 'used' as const };
    const onCar = { ...padsAt('2026-02-01', '10'), car: 'a' };
    const sentences = said([onCar, ...season(padsAt, '9', '8')], used);
    expect(sentences[0]).toContain('likely at most 8 mm now');
    expect(sentences.at(-1)).toMatch(/not in the log.*measure it before you rely on this/);
  });

  it('says when pads are too thin to begin a circuit day', () => {
    expect(said(season(padsAt, '7', '6.5', '5.9'))).toContain(
      'Below 6 mm, what a circuit day should begin with (common practice).',
    );
    expect(said(season(padsAt, '7.5', '7', '6.5'))).toHaveLength(2);
    const own = { ...pads, startDepth: mm('7') };
    expect(said(season(padsAt, '7.5', '7', '6.5'), own)[1]).toMatch(/7 mm, .* \(your own value\)/);
  });
});

describe('wearToDo()', () => {
  const toDo = (drafts: readonly Drafted[], gear?: GearDraft) =>
    wearToDo(wearOf(drafts, gear), 'km');

  it('asks for what is below a minimum, near it, or too thin to begin with', () => {
    expect(toDo(season(padsAt, '4', '2.5'))).toEqual({
      mark: 'overdue',
      words: 'front left inner pad below the 3 mm of common practice',
    });
    const near = toDo(season(padsAt, '7', '6', '5', '4'));
    expect(near?.mark).toBe('dueSoon');
    expect(near?.words).toMatch(/^front left inner pad at 3 mm \(common practice\) in about [34] /);
    expect(toDo(season(padsAt, '7', '6.5', '5.9'))?.words).toContain('should begin with');
    expect(toDo(season(padsAt, '11', '10', '9'))).toBeNull();
  });
});

describe('wearFirst()', () => {
  const look = (sessions: number) => ({
    id: 'look',
    name: 'Look',
    limits: [{ measure: 'sessions' as const, value: sessions }],
  });
  const first = (values: string[], items: Parameters<typeof gearBook>[0]['items'] = []) => {
    const entries = entriesOf(season(padsAt, ...values));
    const { life, analysis } = analyseGear(
      gearBook({ gear: pads, asOf: '2026-06-01', entries, items }),
    );
    return life?.wear ? wearFirst(life.wear, analysis.items, 'km') : undefined;
  };

  it('speaks where nothing is watched, or less use is left than to a limit in the same use', () => {
    // some 20 sessions to 3 mm; 16 are behind
    const runsOut = { mark: 'noDate', word: 'First to run out' };
    expect(first(['11', '10', '9', '8'])).toMatchObject(runsOut);
    expect(first(['11', '10', '9', '8'], [look(60)])).toMatchObject(runsOut);
    expect(first(['11', '10', '9', '8'], [look(20)])).toBeNull();
  });

  it('says nothing where days and use cannot be told apart, unless it asks for something', () => {
    const yearly = { ...look(1), limits: [{ measure: 'months' as const, value: 12 }] };
    expect(first(['11', '10', '9', '8'], [yearly])).toBeNull();
    expect(first(['4', '2.5'], [yearly])).toMatchObject({ mark: 'overdue', word: 'Worn out' });
  });
});

describe('words of wear', () => {
  it('rateWords() takes the use that can be told apart', () => {
    expect(rateWords(0.42, 'mm', 'sessions', 'km')).toBe('about 0.42 mm a session');
    expect(rateWords(0.0002, 'mm', 'km', 'km')).toBe('about 0.2 mm per 1,000 km');
    expect(rateWords(0.0002, 'mm', 'km', 'mi')).toBe('about 0.32 mm per 1,000 mi');
    expect(rateWords(0.004, 'mm', 'launches', 'km')).toBe('about 0.04 mm in 10 launches');
    expect(rateWords(0.0937, 'mm', 'sessions', 'km')).toBe('about 0.09 mm a session');
    expect(rateWords(0.0001, 'mm', 'sessions', 'km')).toBe('less than 0.001 mm a session');
  });

  it('useWords() rounds down', () => {
    expect(useWords(7.9, 'sessions', 'km')).toBe('7 sessions');
    expect(useWords(21_875, 'km', 'km')).toBe('21,000 km');
    expect(useWords(1, 'launches', 'km')).toBe('1 launch');
  });

  it('leftWords() tells likely from as few as, and knows nothing left', () => {
    const left = (likely: number | null, low: number) =>
      leftWords({ likely, low, high: null }, 'sessions', 'km');
    expect(left(7.2, 5.4)).toBe('in about 7 sessions, could be as few as 5');
    expect(left(7.2, 7.1)).toBe('in about 7 sessions');
    expect(left(2.5, 0)).toBe('in about 2 sessions, could be there already');
    expect(left(2.5, 0.3)).toBe('in about 2 sessions, could be less than one session');
    expect(left(0.4, 0.3)).toBe('in less than one session');
    expect(left(900, 5)).toBe('in more than 200 sessions');
    expect(left(null, 9.5)).toBe('not before about 9 sessions');
  });

  it('countedWords() says what counts as what, where sorts of use are mixed', () => {
    const mixed = [
      { kind: 'odometer', on: '2026-02-28', car: 'a', odometer: km(1000) } as const,
      ...season(padsAt, '9', '8'),
      { kind: 'odometer', on: '2026-05-28', car: 'a', odometer: km(9000) } as const,
    ];
    expect(countedWords(wearOf(mixed), 'km')).toBe(
      'Other use is counted in: 2,000 km of road or 10 launches count as one session (common practice).',
    );
    expect(countedWords(wearOf(season(padsAt, '9')), 'km')).toBeNull();
  });
});
