import type { WorkLine } from '@quartermark/engine/readiness';
import { expect, test } from 'vitest';
import { workCautions } from './work-cautions.ts';

const line = (more: Partial<WorkLine>): WorkLine => ({
  id: 'c/work/x',
  car: 'c',
  work: 'service',
  what: 'Service',
  needs: [],
  blocking: true,
  latest: null,
  earliest: null,
  parts: null,
  leadDays: 0,
  feasible: true,
  record: null,
  ...more,
});
const car = { profile: { sump: 'dry' }, items: [] } as const;

test('workCautions() gives the cautions of each kind of work, each once', () => {
  const said = workCautions(
    [
      line({ work: 'fluids', record: { at: 'entry', kind: 'oilChange' } }),
      line({
        work: 'fluids',
        what: 'Renew the brake fluid',
        record: { at: 'entry', kind: 'service' },
      }),
      line({ work: 'torque', record: { at: 'entry', kind: 'wheels' } }),
      line({ work: 'bedIn', record: { at: 'gear', gear: 'p' } }),
    ],
    car,
  );
  for (const word of [
    /carbon monoxide/,
    /pedal until it is firm/,
    /torque/,
    /Bed brakes/,
    /jack alone/,
  ])
    expect(said.filter((caution) => word.test(caution))).toHaveLength(1);
});

test('workCautions() reads a dry sump hot, and has nothing to say of what is only written down', () => {
  const oil = line({ work: 'oil', record: { at: 'entry', kind: 'oilCheck' } });
  expect(workCautions([oil], car)[0]).toContain('hot and idling');
  const read = line({ work: 'writeDown', record: { at: 'entry', kind: 'service', item: 'i' } });
  expect(workCautions([read, line({ work: 'papers' })], car)).toEqual([]);
});
