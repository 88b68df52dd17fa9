import { describe, expect, it } from 'vitest';
import { missingApprovals } from './approval.ts';

describe('missingApprovals()', () => {
  it.each([
    ['ACEA C3', 'ACEA C3'],
    ['ACEA C3', 'API SP; acea-c3'],
    ['ACEA C3', 'ACEA C2/C3'],
    ['ACEA C3', 'ACEA A3/B4, C3'],
    ['ACEA A3/B4', 'acea a3-b4'],
    ['TERN X 04', 'Approved to Tern X-04'],
    ['TERN 41.5', 'Tern 41.3, Tern 41.5'],
    ['731 20', '731.20/734.20'],
    ['API SN', 'API SN PLUS'],
    ['API SP or ACEA C3', 'ACEA C3, API SP'],
    ['', 'API SP'],
  ])('finds %j in %j', (asked, given) => {
    expect(missingApprovals(asked, given)).toEqual([]);
  });

  it.each([
    ['ACEA C3', 'ACEA C30', ['ACEA C3']],
    ['TERN 41.5', 'Tern 41.51', ['TERN 41.5']],
    ['TERN 41.5', 'Tern 41.3, 5W-40', ['TERN 41.5']],
    ['41.5', '241.5', ['41.5']],
    ['C3', 'ACEA A3, API SP 3', ['C3']],
    ['ACEA C3, API SP', 'API SP', ['ACEA C3']],
    ['ACEA C3', '', ['ACEA C3']],
  ])('misses of %j in %j: %j', (asked, given, missing) => {
    expect(missingApprovals(asked, given)).toEqual(missing);
  });
});
