import { type GarageToCompose, garagesToCompose } from '@quartermark/db';
import { causeOf } from '../causes.ts';
import type { LetterWork } from '../lanes.ts';
import type { Shop } from '../shop.ts';
import { composeGarage } from './compose-garage.ts';

const GARAGES_PER_PAGE = 200;
const GARAGES_PER_CHUNK = 50;

/**
 * Finds the garages whose letters may be composed, and queues them. What is lost on the way is found again by the
 * next tick: a garage counts as done only when its digest is stored.
 */
export async function openLetters(shop: Shop): Promise<void> {
  for (let after: string | null = null; ; ) {
    const page: GarageToCompose[] = await garagesToCompose(shop.db, shop.clock.now(), {
      after,
      limit: GARAGES_PER_PAGE,
    });
    await shop.lanes.publishLetters(chunksOf(page.map(({ garageId }) => garageId)));
    if (page.length < GARAGES_PER_PAGE) return;
    after = page.at(-1)?.garageId ?? null;
  }
}

function chunksOf(garageIds: readonly string[]): LetterWork[] {
  const chunks: LetterWork[] = [];
  for (let at = 0; at < garageIds.length; at += GARAGES_PER_CHUNK)
    chunks.push({ garageIds: garageIds.slice(at, at + GARAGES_PER_CHUNK) });
  return chunks;
}

/** Composes the letters of these garages. One that cannot be composed holds up no other; the next tick tries again. */
export async function composeLetters(shop: Shop, { garageIds }: LetterWork): Promise<void> {
  for (const garageId of garageIds) {
    try {
      await composeGarage(shop, garageId);
    } catch (error) {
      shop.log.error(
        { garageId, error: causeOf(error) },
        'the letters of a garage could not be composed',
      );
    }
  }
}
