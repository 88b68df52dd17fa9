import { Redis } from 'ioredis';
import type { Logger } from 'pino';

/**
 * Says so when Redis may throw jobs away under memory pressure. Nothing would be lost for good (the
 * reconciler finds what is missing), but people would wait a minute for it.
 */
export async function warnOfEviction(redisUrl: string, log: Logger): Promise<void> {
  const redis = new Redis(redisUrl, { maxRetriesPerRequest: 1 });
  redis.on('error', (error) => log.warn({ error: error.message }, 'Redis: connection trouble'));
  try {
    const policy = /maxmemory_policy:(\S+)/.exec(await redis.info('memory'))?.[1];
    if (policy && policy !== 'noeviction')
      log.warn(
        { policy },
        'Redis may throw jobs away under memory pressure: set maxmemory-policy to noeviction',
      );
  } catch (error) {
    log.warn({ error: String(error) }, 'could not ask Redis for its maxmemory-policy');
  } finally {
    redis.disconnect();
  }
}
