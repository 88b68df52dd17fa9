import { randomUUID } from 'node:crypto';
import type { Caller } from './api-house.ts';

type Ids = { garageId: string; letterId: string; fact: string };

const command = (garageId: string) => ({ garageId, commandId: randomUUID() });
const wish = {
  rhythm: { every: 'night' as const },
  onlyIfNew: true,
  beforeEvents: true,
  pausedUntil: null,
  mail: true,
  cars: 'all' as const,
};
const post = { sendMinute: 360, mail: null, password: null, hook: null };

/** Every procedure of letters, post, put-offs and calendars, asked by somebody. */
export const letterAskings = (
  asker: () => Caller,
): Record<string, (ids: Ids) => Promise<unknown>> => ({
  'letter.list': ({ garageId }) => asker().letter.list({ garageId }),
  'letter.view': ({ garageId, letterId }) => asker().letter.view({ garageId, letterId }),
  'letter.unread': ({ garageId }) => asker().letter.unread({ garageId }),
  'letter.markRead': ({ garageId, letterId }) =>
    asker().letter.markRead({ ...command(garageId), letterId, read: true }),
  'letter.tonight': ({ garageId }) => asker().letter.tonight({ garageId }),
  'letter.wish': ({ garageId }) => asker().letter.wish({ garageId }),
  'letter.changeWish': ({ garageId }) =>
    asker().letter.changeWish({ ...command(garageId), baseRevision: 0, wish }),
  'letter.sent': ({ garageId }) => asker().letter.sent({ garageId }),
  'post.view': ({ garageId }) => asker().post.view({ garageId }),
  'post.change': ({ garageId }) =>
    asker().post.change({ ...command(garageId), baseRevision: 0, ...post }),
  'post.test': ({ garageId }) => asker().post.test(command(garageId)),
  'putOff.add': ({ garageId, fact }) =>
    asker().putOff.add({ ...command(garageId), facts: [fact], until: '2026-06-20' }),
  'putOff.list': ({ garageId }) => asker().putOff.list({ garageId }),
  'putOff.remove': ({ garageId, fact }) => asker().putOff.remove({ ...command(garageId), fact }),
  'feed.view': ({ garageId }) => asker().feed.view({ garageId }),
  'feed.make': ({ garageId }) => asker().feed.make(command(garageId)),
  'feed.revoke': ({ garageId }) => asker().feed.revoke(command(garageId)),
});

/** Those that take no id but the garage's. */
export const LETTERS_OF_GARAGE = [
  'letter.list',
  'letter.unread',
  'letter.tonight',
  'letter.wish',
  'letter.changeWish',
  'letter.sent',
  'post.view',
  'post.change',
  'post.test',
  'putOff.list',
  'feed.view',
  'feed.make',
  'feed.revoke',
];
