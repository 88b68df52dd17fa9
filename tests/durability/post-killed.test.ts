import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { JobsBench } from '../support/jobs-bench.ts';
import { BACKENDS } from '../support/jobs-worker.ts';
import { KilledNights, type KillPoint } from '../support/killed-night.ts';
import { buildTestWorker } from '../support/worker-process.ts';

beforeAll(buildTestWorker);

/** What a death leads to: letters that arrive, tries, and whether the row says that a copy may have come. */
const ENDS: Record<KillPoint, { copies: number; tries: number; answerLost: boolean }> = {
  composed: { copies: 1, tries: 1, answerLost: false },
  // nothing was sent, which only the dead process knew
  claimed: { copies: 1, tries: 2, answerLost: true },
  // the server's answer was lost with the process
  accepted: { copies: 2, tries: 2, answerLost: true },
};

describe.each(BACKENDS)('a worker that dies over a letter', ({ backend, here }) => {
  describe.skipIf(!here)(`queue on ${backend}`, () => {
    let bench: JobsBench;
    let nights: KilledNights;
    beforeAll(async () => {
      bench = await JobsBench.open('post_killed', backend);
      nights = await KilledNights.open(bench.database, bench.redis, bench.garage);
    });
    afterAll(async () => {
      await nights?.close();
      await bench?.close();
    });

    test.each([
      ['composed', 'before its letter is committed: one letter'],
      ['claimed', 'before it is sent: one letter'],
      ['accepted', 'after the server took it: a second copy of the same Message-ID'],
    ] as const)('at "%s", %s', async (point, _leads) => {
      const night = await nights.killAt(point);
      const { copies, tries, answerLost } = ENDS[point];
      expect(night).toMatchObject({ state: 'delivered', tries, answerLost });
      expect(night.atDeath).toBe(point === 'accepted' ? 1 : 0);
      expect(night.ids).toEqual(Array.from({ length: copies }, () => night.messageId));
    });
  });
});
