import type { OpenMatter } from '@quartermark/api/client';
import { expect, test } from 'vitest';
import { findingsAnswer, matterDetail, rankOf } from './finding-words.ts';

const whose = { carId: 'c', carName: 'Tarnfell Corvo', gearId: null, gearName: null };
const finding = (
  what: string,
  severity: 'doNotDrive' | 'watch',
  more: { where?: string; dueBy?: string } = {},
): OpenMatter => ({
  ...whose,
  kind: 'finding',
  matter: {
    entry: what,
    on: '2026-06-01',
    what,
    where: null,
    severity,
    dueBy: null,
    photos: [],
    ...more,
  },
});
const incident: OpenMatter = {
  ...whose,
  kind: 'incident',
  matter: { entry: 'i', on: '2026-06-06', what: 'softPedal', detail: null, lines: [] },
};

test('findingsAnswer() says first what forbids driving, and on which car', () => {
  expect(findingsAnswer([finding('Brake hose cracked', 'doNotDrive')])).toBe(
    'One finding forbids driving: Brake hose cracked (Tarnfell Corvo).',
  );
  const four = ['A', 'B', 'C', 'D'].map((what) => finding(what, 'doNotDrive'));
  expect(findingsAnswer(four)).toBe(
    '4 findings forbid driving: A (Tarnfell Corvo), B (Tarnfell Corvo), and 2 more.',
  );
});

test('findingsAnswer() tells of incidents too, and of nothing as nothing', () => {
  expect(findingsAnswer([incident, finding('Wiper', 'watch')])).toBe(
    'One incident is not looked over: Soft brake pedal (Tarnfell Corvo).',
  );
  expect(findingsAnswer([finding('Wiper', 'watch')])).toBe(
    'No open finding forbids driving; one stands open.',
  );
  expect(findingsAnswer([])).toBe('No finding is open.');
});

test('rankOf() puts an incident between what forbids driving and what waits', () => {
  expect(rankOf(incident)).toBe('incident');
  expect(rankOf(finding('Wiper', 'watch'))).toBe('watch');
});

test('matterDetail() says where, since when and by when, in the past where that is past', () => {
  const hose = finding('Hose', 'watch', { where: 'rearLeft', dueBy: '2026-06-10' });
  expect(matterDetail(hose, '2026-06-10')).toBe(
    'rear left, since 1 June 2026, to be done by 10 June 2026',
  );
  expect(matterDetail(hose, '2026-06-11')).toContain('was to be done by 10 June 2026');
  expect(matterDetail(incident, '2026-06-11')).toBe('since 6 June 2026');
});
