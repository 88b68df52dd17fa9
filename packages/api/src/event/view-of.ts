import type { EventRow } from '@quartermark/db';
import { eventInput } from '@quartermark/engine/log';
import type { EventView } from '../views.ts';

export function eventViewOf({ id: eventId, body, revision }: EventRow): EventView {
  return { eventId, event: eventInput.parse(body), revision };
}
