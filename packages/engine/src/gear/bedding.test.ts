import { describe, expect, it } from 'vitest';
import { type Drafted, entriesOf, gearBook } from '../../test/gear-book.ts';
import type { ComponentSort } from '../log/gear.ts';
import { analyseGear } from './analyse-gear.ts';

const fit = { kind: 'fit', component: 'set', car: 'a' } as const;
const on = { ...fit, change: 'on', on: '2026-04-01' } as const;
const session = { kind: 'session', use: 'circuit', on: '2026-04-05', car: 'a' } as const;

function bedding(
  drafts: Drafted[],
  condition: 'new' | 'used' = 'new',
  sort: ComponentSort = 'pads',
) {
  const gear = { kind: 'component', name: 'Pads', sort, condition } as const;
  const entries = entriesOf(drafts);
  return analyseGear(gearBook({ gear, asOf: '2026-06-01', entries })).life?.bedding;
}

describe('the bedding of pads and discs', () => {
  it('is a matter of pads and discs alone', () => {
    expect(bedding([on], 'new', 'tyreSet')).toBeNull();
    expect(bedding([on], 'new', 'discs')).toBe('notBedded');
  });

  it('without a word is not done for new parts and unknown for used ones', () => {
    expect(bedding([])).toBe('notBedded');
    expect(bedding([on])).toBe('notBedded');
    expect(bedding([on], 'used')).toBe('unknown');
    expect(bedding([{ ...on, condition: 'used' }])).toBe('unknown');
    expect(bedding([{ ...on, condition: 'new' }], 'used')).toBe('notBedded');
  });

  it('stays not done however much is driven', () => {
    expect(bedding([on, session])).toBe('notBedded');
    expect(bedding([{ ...on, bedding: 'notBedded' }, session])).toBe('notBedded');
  });

  it('in the first session is done once a session has been driven with it, not before', () => {
    const first: Drafted = { ...on, bedding: 'firstSession' };
    expect(bedding([first])).toBe('firstSession');
    expect(bedding([first, { ...session, on: '2026-03-20' }])).toBe('firstSession');
    expect(
      bedding([
        first,
        {
          kind: 'drive',
          use: 'road',
          on: '2026-04-05',
          car: 'a',
          distance: { text: '90', unit: 'km' },
        },
      ]),
    ).toBe('firstSession');
    expect(bedding([first, session])).toBe('bedded');
    expect(bedding([first, { ...fit, change: 'off', on: '2026-04-03' }, session])).toBe(
      'firstSession',
    );
  });

  it('goes by the last word, a fit or an answer', () => {
    const answer = { kind: 'answer', gear: 'set', notice: 'bedding' } as const;
    const answered: Drafted = { ...answer, answer: 'bedded', on: '2026-04-06' };
    expect(bedding([on, answered])).toBe('bedded');
    expect(bedding([on, { ...answered, notice: 'finding-1' }])).toBe('notBedded');
    expect(bedding([on, answered, { ...answer, answer: 'notBedded', on: '2026-04-07' }])).toBe(
      'notBedded',
    );
    expect(
      bedding([answered, on, { ...fit, change: 'moved', on: '2026-04-08', bedding: 'notBedded' }]),
    ).toBe('notBedded');
  });

  it('is kept off the car and back on it, and unknown against the discs of another', () => {
    const off: Drafted = { ...fit, change: 'off', on: '2026-04-10' };
    const back: Drafted = { ...on, on: '2026-04-20' };
    const bedded: Drafted = { ...on, bedding: 'bedded' };
    expect(bedding([bedded, off])).toBe('bedded');
    expect(bedding([bedded, off, back])).toBe('bedded');
    expect(bedding([bedded, off, { ...back, car: 'b' }])).toBe('unknown');
    expect(bedding([bedded, off, { ...back, condition: 'new' }])).toBe('notBedded');
  });
});
