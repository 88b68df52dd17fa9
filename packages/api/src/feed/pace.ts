/** How much of this process calendars may take. */
export type FeedPace = {
  /** @returns seconds after which a calendar may ask again; null: it may now, and that was counted */
  mayAsk(feedId: string, now: Date): number | null;
  /** Does one calendar's work when its turn comes; null: too many wait already, nothing was done. */
  inTurn<T>(work: () => Promise<T>): Promise<T | null>;
};

/** Calendar programs ask every few hours, the eager ones every few minutes. */
const HOUR_MS = 3_600_000;
const AN_HOUR = 60;
const AT_ONCE = 2;
const WAITING_MAX = 20;

/**
 * Keeps calendars from taking the process to themselves: each may ask 60 times within an hour, two are written at
 * once and twenty wait, so that of the ten connections eight are people's.
 */
export function feedPace(): FeedPace {
  const asked = new Map<string, { since: number; times: number }>();
  const waiting: (() => void)[] = [];
  let running = 0;
  return {
    mayAsk(feedId, now) {
      const at = now.getTime();
      for (const [id, { since }] of asked) if (at - since >= HOUR_MS) asked.delete(id);
      const counted = asked.get(feedId) ?? { since: at, times: 0 };
      if (counted.times >= AN_HOUR) return Math.ceil((counted.since + HOUR_MS - at) / 1000);
      asked.set(feedId, { ...counted, times: counted.times + 1 });
      return null;
    },
    async inTurn(work) {
      if (running >= AT_ONCE) {
        if (waiting.length >= WAITING_MAX) return null;
        // whoever leaves hands on his place
        await new Promise<void>((resolve) => waiting.push(resolve));
      } else running += 1;
      try {
        return await work();
      } finally {
        const next = waiting.shift();
        if (next) next();
        else running -= 1;
      }
    },
  };
}
