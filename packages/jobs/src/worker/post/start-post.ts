import { type DueDelivery, dueDeliveries } from '@quartermark/db';
import { causeOf } from '../causes.ts';
import type { Shop } from '../shop.ts';

const PER_PAGE = 500;
/** While more than this waits, a slow server is what holds it up: queueing it again would only pile it up. */
const WAITING_MOST = 500;

export type Post = {
  /** Queues whatever is due, unless enough waits already; resolves when it was looked at once after the call. */
  sweep(): Promise<void>;
  stop(): Promise<void>;
};

/**
 * Finds what is to leave the house: with each tick, each minute, and whenever somebody wrote something. What is due
 * stands in the database, so a job that was lost is only made again.
 */
export function startPost(shop: Shop): Post {
  let wanted = false;
  let running: Promise<void> | null = null;
  let stopped = false;

  async function run() {
    while (wanted && !stopped) {
      wanted = false;
      await queueDue(shop, () => stopped);
    }
  }

  return {
    sweep() {
      wanted = true;
      running ??= run()
        .catch((error: unknown) =>
          shop.log.warn({ error: causeOf(error) }, 'what is due could not be queued; trying again'),
        )
        .finally(() => {
          running = null;
        });
      return running;
    },
    async stop() {
      stopped = true;
      await running;
    },
  };
}

async function queueDue({ db, lanes, clock }: Shop, stopped: () => boolean): Promise<void> {
  if ((await lanes.waitingPost()) > WAITING_MOST) return;
  let after: DueDelivery | null = null;
  while (!stopped()) {
    const page: DueDelivery[] = await dueDeliveries(db, clock.now(), { after, limit: PER_PAGE });
    if (page.length > 0)
      await lanes.publishPost(
        page.map(({ id, dueAt }) => ({ deliveryId: id, dueMs: dueAt.getTime() })),
      );
    if (page.length < PER_PAGE) return;
    after = page.at(-1) ?? null;
  }
}
