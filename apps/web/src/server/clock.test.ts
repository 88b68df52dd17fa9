import { afterEach, expect, test, vi } from 'vitest';
import { makeClock } from './clock.ts';

afterEach(() => {
  vi.useRealTimers();
});

test.each(['00:05', '07:59', '08:00', '12:00', '16:00', '22:30', '23:59'])(
  'makeClock() keeps the pinned day in London and Berlin when it is %s outside, and runs on',
  (time) => {
    vi.useFakeTimers({ now: new Date(`2026-11-25T${time}:00Z`) });
    const clock = makeClock('2026-06-15');
    const began = clock.now();
    vi.advanceTimersByTime(90 * 60_000);
    expect(clock.now().getTime() - began.getTime()).toBe(90 * 60_000);
    for (const timeZone of ['Europe/London', 'Europe/Berlin'])
      for (const moment of [began, clock.now()])
        expect(new Intl.DateTimeFormat('sv-SE', { timeZone }).format(moment)).toBe('2026-06-15');
  },
);
