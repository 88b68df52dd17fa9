import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NEED_STATUSES, type Need, type NeedStatus } from './result.ts';
import { verdictOf } from './verdict.ts';

const TODAY = '2026-06-15';

function need(status: NeedStatus, more: Partial<Need> = {}): Need {
  return {
    id: status,
    kind: 'limit',
    subject: null,
    weight: 'blocking',
    status,
    title: 'Something',
    margin: null,
    reason: 'Because.',
    evidence: [],
    remedy:
      status === 'met'
        ? null
        : {
            work: 'service',
            what: 'Do it',
            latest: null,
            earliest: null,
            parts: null,
            leadDays: 0,
            feasible: true,
            record: null,
          },
    accepted: null,
    mayAccept: true,
    ...more,
  };
}
const ACCEPTED = { acceptanceId: 'a', by: 'Jenna Holt-Brae', on: TODAY, because: 'seen by eye' };
const advice = { weight: 'advice' } as const;

describe('verdictOf()', () => {
  // written out by hand: worst first over the blocking needs
  it.each<[Need[], string]>([
    [[], 'ready'],
    [[need('met')], 'ready'],
    [[need('met'), need('metAfterWork')], 'canBeReady'],
    [[need('met'), need('unknown')], 'notOnRecord'],
    [[need('metAfterWork'), need('unknown')], 'notOnRecord'],
    [[need('unknown'), need('notMet')], 'notInTime'],
    [[need('metAfterWork'), need('notMet')], 'notInTime'],
    [[need('met'), need('metAfterWork'), need('unknown'), need('notMet')], 'notInTime'],
    [[need('notMet', advice)], 'ready'],
    [[need('unknown', advice), need('metAfterWork')], 'canBeReady'],
    [[need('notMet', { accepted: ACCEPTED })], 'ready'],
    [[need('unknown', { accepted: ACCEPTED }), need('unknown')], 'notOnRecord'],
  ])('%#: the worst of them', (needs, word) => {
    expect(verdictOf(needs, TODAY).word).toBe(word);
  });

  it('says the day on which the slowest part has come and work lasts', () => {
    const remedy = need('metAfterWork').remedy as NonNullable<Need['remedy']>;
    const needs = [
      need('metAfterWork', { remedy: { ...remedy, leadDays: 2 } }),
      need('metAfterWork', { remedy: { ...remedy, earliest: '2026-06-18' } }),
      need('metAfterWork', { remedy: { ...remedy, leadDays: 30 }, ...advice }),
    ];
    expect(verdictOf(needs, TODAY)).toEqual({ word: 'canBeReady', by: '2026-06-18' });
  });

  it('is never ready with a blocking need that is not known, not met or waits for work', () => {
    const some = fc.record({
      status: fc.constantFrom(...NEED_STATUSES),
      weight: fc.constantFrom('blocking' as const, 'advice' as const),
      accepted: fc.constantFrom(null, ACCEPTED),
    });
    fc.assert(
      fc.property(fc.array(some, { maxLength: 12 }), (drawn) => {
        const needs = drawn.map(({ status, ...more }) => need(status, more));
        const stands = drawn.some(
          ({ status, weight, accepted }) =>
            status !== 'met' && weight === 'blocking' && accepted === null,
        );
        expect(verdictOf(needs, TODAY).word === 'ready').toBe(!stands);
      }),
    );
  });
});
