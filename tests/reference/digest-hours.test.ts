import { nextComposeAt, nightDue, sendsAt } from '@quartermark/digest/hours';
import { addDays, instantAt, startOfDay, todayIn } from '@quartermark/engine/calendar';
import { describe, expect, it } from 'vitest';
import dst from './data/dst-cases.json' with { type: 'json' };

const minuteOf = (local: string) => Number(local.slice(11, 13)) * 60 + Number(local.slice(14, 16));
const iso = (instant: number) => new Date(instant).toISOString().replace('.000Z', 'Z');
/** Date and time that the clocks of a zone show, by the runtime's own calendar. */
function shown(instant: number, timeZone: string): string {
  return new Intl.DateTimeFormat('sv-SE', {
    timeZone,
    dateStyle: 'short',
    timeStyle: 'short',
  }).format(instant);
}

describe('instantAt()', () => {
  it.each(dst.cases)('tells $local in $zone ($kind)', ({ zone, local, instant }) => {
    expect(iso(instantAt(local.slice(0, 10), minuteOf(local), zone))).toBe(instant);
  });
  it.each([-1, 1440, 0.5, Number.NaN])('refuses minute %s', (minute) => {
    expect(() => instantAt('2026-06-15', minute, 'Etc/UTC')).toThrow(RangeError);
  });
});

describe('sendsAt()', () => {
  // a day that its zone left out has no letter: see "the date line" below
  const cases = dst.cases.filter(({ zone }) => zone !== 'Pacific/Apia');
  it.each(cases)('is the hour of $local in $zone ($kind)', ({ zone, local, instant }) => {
    const clock = { zone, sendMinute: minuteOf(local) };
    expect(iso(sendsAt(local.slice(0, 10), clock))).toBe(instant);
  });
  it.each(dst.transitions2026)(
    'is 06:00 by the clocks on every day of 2026 in $zone',
    ({ zone }) => {
      for (let day = '2026-01-01'; day <= '2026-12-31'; day = addDays(day, 1))
        expect(shown(sendsAt(day, { zone, sendMinute: 360 }), zone)).toBe(`${day} 06:00`);
    },
  );
  it.each(dst.transitions2026)(
    'lies within its own day, whatever the minute, in $zone',
    (change) => {
      const { zone, gap, overlap } = change;
      for (const day of [gap, overlap].map((local) => local.slice(0, 10)))
        for (let sendMinute = 0; sendMinute < 1440; sendMinute += 5) {
          const at = sendsAt(day, { zone, sendMinute });
          expect(todayIn(at, zone)).toBe(day);
          expect(at).toBeGreaterThanOrEqual(nextComposeAt(addDays(day, -1), zone));
        }
    },
  );
});

describe('nextComposeAt()', () => {
  // the clocks go forward at midnight: the day begins at 01:00 (IANA time zone database)
  it('is the first minute there is where midnight is missing', () => {
    expect(shown(nextComposeAt('2026-04-23', 'Africa/Cairo'), 'Africa/Cairo')).toBe(
      '2026-04-24 01:00',
    );
  });
  it.each(dst.transitions2026)(
    'is midnight by the clocks on every day of 2026 in $zone',
    ({ zone }) => {
      for (let day = '2026-01-01'; day <= '2026-12-31'; day = addDays(day, 1))
        expect(shown(nextComposeAt(addDays(day, -1), zone), zone)).toBe(`${day} 00:00`);
    },
  );
});

type Composed = { date: string; missed: string[]; at: number; sendAt: number };

const TICK = 1_800_000;

/** Ticks every half hour; where the garage stands, and when nobody ticks, comes from outside. */
function live(
  days: { from: number; until: number },
  zoneAt: (now: number) => string,
  down: (now: number) => boolean = () => false,
) {
  const composed: Composed[] = [];
  for (let now = days.from; now < days.until; now += TICK) {
    if (down(now)) continue;
    const night = nightDue(now, composed.at(-1)?.date ?? null, {
      zone: zoneAt(now),
      sendMinute: 360,
    });
    if (night) composed.push({ ...night, at: now });
  }
  return composed;
}

const datesOf = (composed: Composed[]) => composed.map(({ date }) => date);
const covered = (composed: Composed[]) => composed.flatMap(({ date, missed }) => [...missed, date]);
function daysFrom(first: string, last: string): string[] {
  const days: string[] = [];
  for (let day = first; day <= last; day = addDays(day, 1)) days.push(day);
  return days;
}
const HOUR = 3_600_000;

describe('nightDue(), ticked every half hour', () => {
  it.each(dst.transitions2026)(
    'gives each date of 2026 one letter, at 06:00, in $zone',
    ({ zone }) => {
      const from = startOfDay('2026-01-01', zone);
      const composed = live({ from, until: startOfDay('2027-01-01', zone) }, () => zone);
      expect(datesOf(composed)).toEqual(daysFrom('2026-01-01', '2026-12-31'));
      for (const { date, missed, at, sendAt } of composed) {
        expect(missed).toEqual([]);
        expect(shown(at, zone)).toBe(`${date} 00:00`);
        expect(shown(sendAt, zone)).toBe(`${date} 06:00`);
      }
    },
  );

  // moves in both directions, at many hours of the day, across the changes of the clocks too
  const MOVES = [
    ['Europe/London', 'America/New_York'],
    ['America/New_York', 'Europe/London'],
    ['Europe/London', 'Australia/Lord_Howe'],
    ['Australia/Lord_Howe', 'America/New_York'],
  ] as const;
  it.each(MOVES)(
    'never gives a date two letters, nor leaves one out, after a move from %s to %s',
    (a, b) => {
      for (const change of [
        '2026-03-08',
        '2026-03-29',
        '2026-06-15',
        '2026-10-04',
        '2026-10-25',
        '2026-11-01',
      ])
        for (let hour = 0; hour < 24; hour += 1) {
          const from = startOfDay(addDays(change, -3), a);
          const moved = startOfDay(change, a) + hour * HOUR;
          const composed = live({ from, until: from + 7 * 24 * HOUR }, (now) =>
            now < moved ? a : b,
          );
          const dates = datesOf(composed);
          expect(new Set(dates).size).toBe(dates.length);
          expect(covered(composed)).toEqual(daysFrom(addDays(change, -3), dates.at(-1) ?? ''));
          expect(composed.every(({ missed }) => missed.length === 0)).toBe(true);
        }
    },
  );

  it('over the date line to the west has a letter for what is left of a date, at once', () => {
    const moved = Date.UTC(2026, 5, 15, 9);
    const zoneAt = (now: number) => (now < moved ? 'Pacific/Honolulu' : 'Pacific/Kiritimati');
    const days = { from: Date.UTC(2026, 5, 13, 10), until: Date.UTC(2026, 5, 17, 9) };
    const composed = live(days, zoneAt);
    // 14 June 23:00 in the one zone is 15 June 23:00 in the other
    expect(datesOf(composed)).toEqual(daysFrom('2026-06-13', '2026-06-17'));
    expect(composed[2]).toMatchObject({ at: moved, sendAt: moved, missed: [] });
  });

  it('leaves out a date that the move skipped, and counts it among the missed ones', () => {
    const moved = Date.UTC(2026, 5, 15, 11);
    const zoneAt = (now: number) => (now < moved ? 'Etc/GMT+12' : 'Pacific/Kiritimati');
    const days = { from: Date.UTC(2026, 5, 13, 12), until: Date.UTC(2026, 5, 17, 9) };
    const composed = live(days, zoneAt);
    // 14 June 23:00 in the one zone is 16 June 01:00 in the other
    expect(datesOf(composed)).toEqual(['2026-06-13', '2026-06-14', '2026-06-16', '2026-06-17']);
    expect(composed[2]).toMatchObject({ at: moved, missed: ['2026-06-15'] });
    expect(shown(composed[2]?.sendAt ?? 0, 'Pacific/Kiritimati')).toBe('2026-06-16 06:00');
  });

  it('over the date line to the east waits until the date is a new one', () => {
    const moved = Date.UTC(2026, 5, 15, 12);
    const zoneAt = (now: number) => (now < moved ? 'Pacific/Kiritimati' : 'Pacific/Honolulu');
    const composed = live(
      { from: Date.UTC(2026, 5, 13, 10), until: Date.UTC(2026, 5, 18, 10) },
      zoneAt,
    );
    expect(datesOf(composed)).toEqual(['2026-06-14', '2026-06-15', '2026-06-16', '2026-06-17']);
    // 16 June came twice; the second one had its letter already
    expect(shown(composed[3]?.at ?? 0, 'Pacific/Honolulu')).toBe('2026-06-17 00:00');
  });

  it('counts a date that its zone left out among the missed ones, and gives it no letter', () => {
    const zone = 'Pacific/Apia';
    const composed = live(
      { from: startOfDay('2011-12-28', zone), until: startOfDay('2012-01-02', zone) },
      () => zone,
    );
    expect(datesOf(composed)).toEqual(['2011-12-28', '2011-12-29', '2011-12-31', '2012-01-01']);
    expect(composed[2]?.missed).toEqual(['2011-12-30']);
  });

  it('makes up for nights nobody ticked in by one letter, which leaves at once', () => {
    const zone = 'America/New_York';
    const back = instantAt('2026-03-10', 14 * 60, zone);
    const down = (now: number) => now >= startOfDay('2026-03-07', zone) && now < back;
    const composed = live(
      { from: startOfDay('2026-03-05', zone), until: startOfDay('2026-03-12', zone) },
      () => zone,
      down,
    );
    expect(datesOf(composed)).toEqual(['2026-03-05', '2026-03-06', '2026-03-10', '2026-03-11']);
    expect(composed[2]).toMatchObject({
      missed: ['2026-03-07', '2026-03-08', '2026-03-09'],
      sendAt: back,
    });
    expect(composed[3]?.missed).toEqual([]);
  });
});
