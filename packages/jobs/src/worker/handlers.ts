import { failWork, withGarage } from '@quartermark/db';
import { causeOf } from './causes.ts';
import type { Handlers, Work } from './lanes.ts';
import { composeLetters, openLetters } from './letters/night-of-letters.ts';
import { openNight, runNightChunk } from './night.ts';
import { postDelivery } from './post/post-delivery.ts';
import type { Post } from './post/start-post.ts';
import { TRIES } from './queue.ts';
import { recompute } from './recompute.ts';
import type { Shop } from './shop.ts';
import { waitAfterMs } from './wait.ts';

/** What is done with each kind of job, and what is left for a person to see when it fails for good. */
export function handlersOf(shop: Shop, post: Post): Handlers {
  return {
    async recompute(work, { left }) {
      try {
        await recompute(shop, work);
      } catch (error) {
        shop.log.warn({ ...work, triesLeft: left, error: causeOf(error) }, 'recompute failed');
        if (left === 0) await recordFailure(shop, work, error, TRIES);
        throw error;
      }
    },
    night: (work, tries) =>
      runNightChunk(shop, work, tries, (car, error) => recordFailure(shop, car, error, TRIES)),
    async letters(work) {
      await composeLetters(shop, work);
      // those of a night that was made up for are due at once
      await post.sweep();
    },
    async tick() {
      await post.sweep();
      await openNight(shop);
      await openLetters(shop);
    },
    post: (work) => postDelivery(shop, work),
    gaveUp: (work, error) => void recordFailure(shop, work, error, 1),
  };
}

/** If even this cannot be written, the reconciler still finds the car behind and tries again. */
async function recordFailure(shop: Shop, work: Work, error: unknown, tries: number) {
  const cause = causeOf(error);
  shop.log.error({ ...work, cause }, 'recompute failed for good; it is tried again later');
  try {
    await withGarage(shop.db, { kind: 'job' }, work.garageId, (tx) =>
      failWork(tx, work, { cause, tries, restMs: waitAfterMs }),
    );
  } catch (unwritten) {
    shop.log.error({ ...work, error: causeOf(unwritten) }, 'the failure could not be recorded');
  }
}
