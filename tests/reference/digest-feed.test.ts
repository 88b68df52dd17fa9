import { calendarFeed, type FeedEntry, type Published, revise } from '@quartermark/digest/feed';
import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';

// Limits and rules: RFC 5545 (September 2009), sections 3.1, 3.4, 3.6.1 and 3.3.11, and RFC 7986, section 5.7.
const NOW = Date.UTC(2026, 5, 15, 4, 30, 7, 123);
const octets = (text: string) => Buffer.byteLength(text, 'utf8');

function entry(over: Partial<FeedEntry> = {}): FeedEntry {
  return {
    uid: 'due.c1.fluid@g1.quartermark',
    start: '2026-06-20',
    end: '2026-06-20',
    summary: 'Likely due: Brake fluid, Brindle',
    description: '24 months are up on 20 June 2026',
    url: 'https://garage.example/record?car=c1',
    category: 'Due',
    ...over,
  };
}

const feedOf = (entries: FeedEntry[], published: Published[] = [], now = NOW) =>
  calendarFeed('Hollow Lane', revise(entries, published, now).entries);

/** As another program reads it. */
function read(feed: string) {
  const calendar = new ICAL.Component(ICAL.parse(feed) as unknown[]);
  const events = calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      summary: event.summary,
      description: event.description,
      start: event.startDate.toString(),
      end: event.endDate.toString(),
      allDay: event.startDate.isDate && event.endDate.isDate,
      sequence: Number(event.sequence),
      stamp: String(component.getFirstPropertyValue('dtstamp')),
      modified: String(component.getFirstPropertyValue('last-modified')),
      url: String(component.getFirstPropertyValue('url')),
      names: component.getAllProperties().map(({ name }) => name),
    };
  });
  return { calendar, events };
}

/** Anything somebody may type, and what breaks writers: long runs, signs of every width, line breaks. */
const typed = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200, size: 'max' }),
  fc.string({
    unit: fc.constantFrom('é', '€', '😀', ';', ',', '\\', '\n', '"', ':', 'x', ' '),
    maxLength: 200,
    size: 'max',
  }),
);

describe('calendarFeed()', () => {
  it('writes an entry word for word', () => {
    const feed = feedOf([entry()]);
    expect(feed.split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'VERSION:2.0',
      'PRODID:-//Quartermark//Garage calendar 1//EN',
      'CALSCALE:GREGORIAN',
      'NAME:Hollow Lane',
      'X-WR-CALNAME:Hollow Lane',
      'REFRESH-INTERVAL;VALUE=DURATION:PT12H',
      'BEGIN:VEVENT',
      'UID:due.c1.fluid@g1.quartermark',
      'DTSTAMP:20260615T043007Z',
      'LAST-MODIFIED:20260615T043007Z',
      'SEQUENCE:0',
      'DTSTART;VALUE=DATE:20260620',
      'DTEND;VALUE=DATE:20260621',
      'SUMMARY:Likely due: Brake fluid\\, Brindle',
      'DESCRIPTION:24 months are up on 20 June 2026',
      'URL:https://garage.example/record?car=c1',
      'CATEGORIES:Due',
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  it('has every property that is asked for, once, and an end beside no duration', () => {
    const { calendar, events } = read(feedOf([entry(), entry({ uid: 'look.c1@g1.quartermark' })]));
    for (const name of ['version', 'prodid', 'calscale', 'refresh-interval'])
      expect(calendar.getAllProperties(name)).toHaveLength(1);
    expect(String(calendar.getFirstPropertyValue('refresh-interval'))).toBe('PT12H');
    expect(events).toHaveLength(2);
    for (const { names } of events) {
      expect(new Set(names).size).toBe(names.length);
      expect(names).toEqual(
        expect.arrayContaining(['uid', 'dtstamp', 'dtstart', 'dtend', 'sequence']),
      );
      expect(names).not.toContain('duration');
    }
  });

  it('ends the day after the last, as calendars count', () => {
    const { events } = read(feedOf([entry({ start: '2026-06-30', end: '2026-07-01' })]));
    expect(events[0]).toMatchObject({ start: '2026-06-30', end: '2026-07-02', allDay: true });
  });

  it('is a calendar of at least one component, also without an entry', () => {
    const { calendar, events } = read(feedOf([]));
    expect(events).toEqual([]);
    expect(calendar.getAllSubcomponents()).toHaveLength(1);
  });

  it('folds at 75 octets, and not inside a character', () => {
    // 8 octets of the name, 66 letters and one character of two: one octet too many
    const summary = `${'x'.repeat(66)}é`;
    const lines = feedOf([entry({ summary })]).split('\r\n');
    const at = lines.findIndex((line) => line.startsWith('SUMMARY'));
    expect(lines.slice(at, at + 2)).toEqual([`SUMMARY:${'x'.repeat(66)}`, ' é']);
    expect(feedOf([entry({ summary: 'x'.repeat(67) })])).toContain(`SUMMARY:${'x'.repeat(67)}\r\n`);
  });

  it('keeps to lines of 75 octets with whole characters, and is read back letter for letter', () => {
    fc.assert(
      fc.property(typed, typed, (summary, description) => {
        const feed = feedOf([entry({ summary, description })]);
        for (const line of feed.split('\r\n')) {
          expect(octets(line)).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n\0]/);
          expect(Buffer.from(line, 'utf8').toString('utf8')).toBe(line);
        }
        const [event] = read(feed).events;
        const kept = (text: string) =>
          text
            .replace(/\r\n?/g, '\n')
            .replace(/[^\P{Cc}\n\t]/gu, '')
            .replace(/\p{Cs}/gu, '\ufffd');
        expect(event?.summary).toBe(kept(summary));
        expect(event?.description ?? '').toBe(kept(description));
      }),
      { numRuns: 300 },
    );
  });

  it('has no line that somebody typed', () => {
    const nasty = 'x\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nUID:y';
    const { events } = read(feedOf([entry({ summary: nasty, description: nasty })]));
    expect(events).toHaveLength(1);
    expect(events[0]?.summary).toBe(nasty.replaceAll('\r\n', '\n'));
  });

  it.each(['ftp://a/b', 'https://a/b c', 'https://a/\r\nX:1', 'javascript:alert(1)'])(
    'refuses the address %j',
    (url) => {
      expect(() => feedOf([entry({ url })])).toThrow(RangeError);
    },
  );
});

describe('revise(), read by another program', () => {
  const later = NOW + 86_400_000;

  it('replaces an entry that moved, under its UID', () => {
    const first = revise([entry()], [], NOW);
    const second = revise(
      [entry({ start: '2026-06-18', end: '2026-06-18' })],
      first.published,
      later,
    );
    // a calendar keeps one entry a UID: the one with the highest sequence
    const kept = new Map<string, ReturnType<typeof read>['events'][number]>();
    for (const { entries } of [first, second])
      for (const event of read(calendarFeed('Hollow Lane', entries)).events)
        if ((kept.get(event.uid)?.sequence ?? -1) < event.sequence) kept.set(event.uid, event);
    expect([...kept.values()]).toMatchObject([
      {
        start: '2026-06-18',
        sequence: 1,
        modified: '2026-06-16T04:30:07Z',
        stamp: '2026-06-16T04:30:07Z',
      },
    ]);
  });

  it('is the same to the octet as long as nothing changes', () => {
    const first = revise([entry()], [], NOW);
    const again = revise([entry()], JSON.parse(JSON.stringify(first.published)), later);
    expect(calendarFeed('Hollow Lane', again.entries)).toBe(
      calendarFeed('Hollow Lane', first.entries),
    );
  });

  it('never counts back, also for one that was gone for a while', () => {
    const first = revise([entry()], [], NOW);
    const moved = revise([entry({ start: '2026-06-18' })], first.published, later);
    const gone = revise([], moved.published, later);
    const back = revise([entry()], gone.published, later + 1000);
    expect(back.entries[0]?.sequence).toBe(2);
  });

  it.each([
    ['summary', 'Overdue: Brake fluid, Brindle'],
    ['description', 'other words'],
    ['end', '2026-06-21'],
    ['url', null],
    ['category', 'Look'],
  ])('counts on when its %s changes', (member, value) => {
    const first = revise([entry()], [], NOW);
    expect(revise([entry({ [member]: value })], first.published, later).entries[0]?.sequence).toBe(
      1,
    );
  });
});
