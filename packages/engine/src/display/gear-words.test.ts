import { describe, expect, it, test } from 'vitest';
import { type Drafted, entriesOf, gearBook, km } from '../../test/gear-book.ts';
import { analyseGear } from '../gear/analyse-gear.ts';
import type { ComponentLife } from '../gear/result.ts';
import type { GearDraft } from '../log/gear.ts';
import type { ItemDraft } from '../log/item.ts';
import { type GearFacts, gearAnswer, gearListAnswer } from './gear-answer.ts';
import { beddingWords, fittedLine, lifeLine, positionWords } from './gear-words.ts';
import { tyreAgeSentence } from './tyre-age-sentence.ts';

const asOf = '2026-06-10';
const pads: GearDraft = { kind: 'component', name: 'Track pads', sort: 'pads', condition: 'new' };
const fit = { kind: 'fit', component: 'set' } as const;

function facts(gear: GearDraft, drafts: Drafted[], items: ItemDraft[] = []): GearFacts {
  const withIds = items.map((item, index) => ({ id: `i${index}`, ...item }));
  const analysed = analyseGear(
    gearBook({ gear, asOf, entries: entriesOf(drafts), items: withIds }),
  );
  return {
    ...analysed,
    name: gear.name,
    unit: 'km',
    items: withIds.map(({ id, name, limits }) => ({ id, item: { name, limits } })),
  };
}
function lifeOf(gear: GearDraft, drafts: Drafted[]): ComponentLife {
  const { life } = facts(gear, drafts);
  if (life === null) throw new Error('a component has a life');
  return life;
}

const season: Drafted[] = [
  { kind: 'odometer', on: '2026-05-01', car: 'a', odometer: km(100) },
  { ...fit, change: 'on', on: '2026-05-03', car: 'a', odometer: km(200), positions: ['REAR'] },
  { kind: 'session', use: 'circuit', on: '2026-05-10', car: 'a', sessions: 14, distance: km(900) },
  { kind: 'odometer', on: '2026-06-01', car: 'a', odometer: km(1440) },
];

test('positionWords() names the axle, the corners, or what was written', () => {
  expect(positionWords(['REAR'])).toBe('the rear axle');
  expect(positionWords(['front axle'])).toBe('the front axle');
  expect(positionWords(['rear', 'Front axle'])).toBe('both axles');
  expect(positionWords(['front', 'front'])).toBe('front and front');
  expect(positionWords(['frontLeft', 'rearRight'])).toBe('front left and rear right');
  expect(positionWords(['all four'])).toBe('all four');
  expect(positionWords([])).toBe('');
});

describe('fittedLine()', () => {
  const on = { name: 'Blue coupé', positions: ['REAR'], since: '2026-05-03' };

  it('says where it is, since when, and what it has done there', () => {
    expect(fittedLine(on, lifeOf(pads, season), 'km')).toBe(
      'On the rear axle of Blue coupé since 3 May 2026, 14 sessions, 1,240 km.',
    );
    expect(fittedLine({ ...on, positions: [] }, lifeOf(pads, season), 'mi')).toBe(
      'On Blue coupé since 3 May 2026, 14 sessions, 771 mi.',
    );
  });

  it('says so where nothing was done there yet', () => {
    expect(fittedLine(on, lifeOf(pads, season.slice(0, 2)), 'km')).toBe(
      'On the rear axle of Blue coupé since 3 May 2026, no use on record there yet.',
    );
  });

  it('says where it is on no car', () => {
    expect(fittedLine(null, lifeOf(pads, []), 'km')).toBe('Not fitted to any car yet.');
    const off: Drafted = { ...fit, change: 'off', on: '2026-06-02', car: 'a' };
    expect(fittedLine(null, lifeOf(pads, [...season, off]), 'km')).toBe(
      'On no car since 2 June 2026.',
    );
  });
});

test('lifeLine() tells totals from lower bounds and from nothing', () => {
  const strip: Drafted = { kind: 'strip', on: '2026-05-20', car: 'a', passes: [{}] };
  expect(lifeLine(lifeOf(pads, season), 'km')).toBe(
    'In all 14 sessions, 1,240 km, since it was new on 3 May 2026.',
  );
  expect(lifeLine(lifeOf({ ...pads, condition: 'used' }, [...season, strip]), 'km')).toBe(
    'At least 14 sessions, 1,240 km, 1 launch: what it did before is not in the log.',
  );
  expect(lifeLine(lifeOf({ ...pads, condition: 'used' }, []), 'km')).toBe(
    'What it has done so far is not known.',
  );
  expect(lifeLine(lifeOf(pads, season.slice(0, 2)), 'km')).toBe(
    'No use on record yet, since it was new on 3 May 2026.',
  );
});

test('beddingWords() says new where it is new, and nothing of tyres', () => {
  expect(beddingWords(lifeOf(pads, []))).toBe('New, not bedded yet');
  expect(beddingWords(lifeOf(pads, season))).toBe('Not bedded yet');
  expect(beddingWords(lifeOf({ ...pads, condition: 'used' }, []))).toBe('Bedding not on record');
  expect(beddingWords(lifeOf({ ...pads, sort: 'tyreSet' }, []))).toBeNull();
});

test('tyreAgeSentence() counts whole years and says what they ask for', () => {
  const said = (dateCode?: string) =>
    tyreAgeSentence(lifeOf({ ...pads, sort: 'tyreSet', ...(dateCode && { dateCode }) }, []), asOf);
  expect(said()).toBeNull();
  expect(said('1026')).toBe(
    'Made in week 10 of 2026, less than a year ago. A yearly look from 8 March 2031, out by 8 March 2036 (advice of tyre makers).',
  );
  expect(said('0120')).toBe(
    'Made in week 1 of 2020, 6 years ago. Have the tyres looked at every year now (advice of tyre makers: yearly after five, out at ten).',
  );
  expect(said('2416')).toMatch(/9 years ago/);
  expect(said('2316')).toMatch(/10 years ago\. Out by age/);
  expect(said('129')).toMatch(/^"129" has three digits, as tyres were stamped before 2000/);
  expect(said('5426')).toMatch(/week 54 does not exist/);
  expect(said('0128')).toBe(
    'The date code says week 1 of 2028, which lies ahead: read it on the tyre again.',
  );
});

const wrench: GearDraft = { kind: 'equipment', name: 'Torque wrench', sort: 'torqueWrench' };
const yearly = (on?: string): ItemDraft => ({
  name: 'Torque wrench, calibration',
  limits: [{ measure: 'months', value: 12 }],
  ...(on && { baseline: { on } }),
});

describe('gearAnswer()', () => {
  const said = (gear: GearDraft, items: ItemDraft[], drafts: Drafted[] = []) =>
    gearAnswer(facts(gear, drafts, items));

  it('answers with the state of what is most urgent', () => {
    expect(said(wrench, [yearly('2025-05-02')])).toBe(
      'Torque wrench: calibration overdue since 2 May 2026.',
    );
    expect(said(wrench, [yearly('2025-06-20')])).toBe(
      'Torque wrench: calibration due by 20 June 2026.',
    );
    expect(said(wrench, [yearly('2026-02-02')])).toBe(
      'Torque wrench: calibration good until 2 February 2027.',
    );
    expect(said(wrench, [yearly()])).toBe('Torque wrench: calibration not on record.');
    expect(said(wrench, [])).toBe('Torque wrench: nothing is watched on it yet.');
  });

  it('speaks of labels by their day', () => {
    const label = (value: string): ItemDraft => ({
      name: 'Helmet',
      limits: [{ measure: 'date', value }],
    });
    const driver: GearDraft = { kind: 'person', name: 'Ada' };
    expect(said(driver, [label('2026-05-02'), yearly()])).toBe(
      'Ada: helmet overdue since 2 May 2026.',
    );
    expect(said(driver, [label('2030-05-02')])).toBe('Ada: helmet good until 2 May 2030.');
  });

  it('speaks of amounts, and of bedding while the pads are on a car', () => {
    const look = (value: number): ItemDraft => ({
      name: 'Look',
      limits: [{ measure: 'sessions', value }],
    });
    expect(said(pads, [look(10)], season)).toBe(
      'Track pads: look overdue, 10 sessions reached on 10 May 2026, 4 sessions over and not bedded yet.',
    );
    expect(said(pads, [look(20)], [])).toBe('Track pads: look not on record.');
    const tyres: GearDraft = { ...pads, name: 'Track set', sort: 'tyreSet' };
    expect(said(tyres, [look(20)], season)).toBe('Track set: look, 6 sessions left.');
    const used: GearDraft = { ...tyres, condition: 'used' };
    expect(said(used, [{ ...look(20), baseline: { on: '2026-01-01' } }], season)).toBe(
      'Track set: look, at least 14 sessions, history incomplete; the limit is 20 sessions.',
    );
  });
});

test('gearAnswer() names what made an item due at once, not its day', () => {
  const asked: ItemDraft = { ...yearly('2026-02-02'), dueSince: '2026-06-01' };
  expect(gearAnswer(facts(wrench, [], [asked]))).toBe(
    'Torque wrench: calibration overdue, you said to treat it as due now.',
  );
});

describe('gearListAnswer()', () => {
  const fine = facts(wrench, [], [yearly('2026-02-02')]);
  const over = facts(wrench, [], [yearly('2025-05-02')]);
  const unknown = facts({ ...wrench, name: 'Old wrench' }, [], [yearly()]);
  const bare = facts(pads, season);

  it('says what needs a hand, overdue first', () => {
    expect(gearListAnswer([fine, bare, over])).toBe(
      'Two need a hand: Torque wrench (calibration overdue since 2 May 2026) and Track pads (not bedded yet).',
    );
    expect(gearListAnswer([over])).toMatch(/^One needs a hand: Torque wrench/);
  });

  it('says when nothing does, and what is not on record', () => {
    expect(gearListAnswer([fine])).toBe('Nothing on record here needs a hand today.');
    expect(gearListAnswer([fine, unknown])).toBe(
      'Nothing on record here needs a hand today, but Old wrench has items that are not fully on record.',
    );
    expect(gearListAnswer([])).toMatch(/^No set, tool or person yet/);
  });
});
