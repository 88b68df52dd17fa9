import {
  type Claimed,
  claimDelivery,
  type Settled,
  settleDelivery,
  withGarage,
} from '@quartermark/db';
import { afterTry, MOST_TRIES, type Outcome } from '@quartermark/post';
import type { PostWork } from '../lanes.ts';
import type { Shop } from '../shop.ts';
import { send } from './send.ts';

/**
 * Makes one try to deliver something: claims it, sends it, and writes down how that ended. Whatever happens after the
 * claim, nobody sends it again before the lease is over.
 */
export async function postDelivery(shop: Shop, { deliveryId }: PostWork): Promise<void> {
  const { db, clock, pace, reached } = shop;
  const claimed = await claimDelivery(db, deliveryId, clock.now(), pace.leaseMs);
  if (claimed === null) return;
  await reached('claimed');
  const outcome = await outcomeOf(shop, claimed);
  if (outcome.is === 'accepted') await reached('accepted');
  await settle(shop, claimed, outcome);
}

async function outcomeOf(shop: Shop, { what, tries }: Claimed): Promise<Outcome> {
  if (what.is === 'nothing') return givenUp(what.why);
  // each of these tries took its process along, or nobody could write its end down
  if (tries > MOST_TRIES) return givenUp('No try came to an end that could be written down.');
  try {
    return await send(shop, what);
  } catch (error) {
    // what is wrong with the letter itself is so at every try
    if (error instanceof RangeError) return givenUp(error.message);
    throw error;
  }
}

const givenUp = (said: string): Outcome => ({ is: 'refused', by: 'policy', said });

async function settle(shop: Shop, claimed: Claimed, outcome: Outcome): Promise<void> {
  const { db, clock, log } = shop;
  const { garageId, id, tries } = claimed;
  const now = clock.now();
  const stands = afterTry(outcome, tries, Math.random());
  const ended = {
    words: stands.said,
    answerLost: outcome.is === 'tryAgain' && outcome.answerLost,
  };
  const settled: Settled =
    stands.is === 'waiting'
      ? { ...ended, state: 'waiting', nextAt: new Date(now.getTime() + stands.waitS * 1000) }
      : { ...ended, state: stands.is };
  await withGarage(db, { kind: 'job' }, garageId, (tx) =>
    settleDelivery(tx, { garageId, id, tries }, settled, now),
  );
  // neither mailbox nor words: a server may repeat either
  log.info({ garageId, delivery: id, what: claimed.what.is, tries, state: stands.is }, 'post');
}
