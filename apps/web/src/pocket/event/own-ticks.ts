import type { TickView } from '@quartermark/api/client';
import { type Command, isTick, type TickMade } from '../queue/command.ts';

/** What was ticked on this phone and no sheet shows yet. */
export type OwnTick = { tick: TickMade; waits: boolean };

/**
 * Ticks of this phone: those that the server has but the sheet does not show, then those that still wait.
 *
 * @param sent in the order of making
 */
export function ownTicks(sent: readonly TickMade[], commands: readonly Command[]): OwnTick[] {
  return [
    ...sent.map((tick) => ({ tick, waits: false })),
    ...commands.filter(isTick).map(({ input }) => ({ tick: input.tick, waits: true })),
  ];
}

/** How a line of work stands. `by` null: ticked on this phone. */
export type LineTick = { done: boolean; by: string | null; waits: boolean };

/**
 * How each line of an event's work stands by what the server has and what was ticked on this phone; the last
 * one made decides, as it will on the server.
 *
 * @param shown the server's, oldest first
 * @returns by id of the line; a line nobody ticked is not there
 */
export function lineTicks(
  eventId: string,
  shown: readonly TickView[],
  own: readonly OwnTick[],
): ReadonlyMap<string, LineTick> {
  const known = new Set(shown.map(({ tickId }) => tickId));
  const last = new Map(shown.map((tick) => [tick.line, tick]));
  const lines = new Map<string, LineTick>(
    shown.map(({ line, done, by }) => [line, { done, by, waits: false }]),
  );
  for (const { tick, waits } of own) {
    const { line, madeAt, done } = tick;
    const later = (last.get(line)?.madeAt ?? '') > madeAt;
    if (tick.eventId === eventId && !known.has(tick.tickId) && !later)
      lines.set(line, { done, by: null, waits });
  }
  return lines;
}
