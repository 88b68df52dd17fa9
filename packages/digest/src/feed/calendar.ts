import { addDays } from '@quartermark/engine/calendar';
import { folded, textValue } from './content-line.ts';
import type { RevisedEntry } from './revise.ts';

/**
 * A calendar feed as `text/calendar; charset=utf-8`.
 *
 * All-day entries by civil date, so no time zone matters; DTEND is the day after the last. Without a METHOD
 * DTSTAMP says when the entry was last revised, as LAST-MODIFIED does: a feed in which nothing changed is the same
 * to the octet.
 *
 * @param name of the calendar, as its reader sees it
 * @returns lines that end in CRLF, none longer than 75 octets
 * Source: RFC 5545, sections 3.4, 3.6.1, 3.7, 3.8; RFC 7986, sections 5.1 (NAME) and 5.7 (REFRESH-INTERVAL).
 */
export function calendarFeed(name: string, entries: readonly RevisedEntry[]): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Quartermark//Garage calendar 1//EN',
    'CALSCALE:GREGORIAN',
    `NAME:${textValue(name)}`,
    // the older name of the same, still the one that most calendars read
    `X-WR-CALNAME:${textValue(name)}`,
    'REFRESH-INTERVAL;VALUE=DURATION:PT12H',
    ...(entries.length === 0 ? EMPTY : entries.flatMap(entryLines)),
    'END:VCALENDAR',
  ];
  return `${lines.map(folded).join('\r\n')}\r\n`;
}

function entryLines(entry: RevisedEntry): string[] {
  const { uid, start, end, summary, description, url, category, sequence, modifiedAt } = entry;
  const revised = utc(modifiedAt);
  return [
    'BEGIN:VEVENT',
    `UID:${textValue(uid)}`,
    `DTSTAMP:${revised}`,
    `LAST-MODIFIED:${revised}`,
    `SEQUENCE:${sequence}`,
    `DTSTART;VALUE=DATE:${day(start)}`,
    `DTEND;VALUE=DATE:${day(addDays(end, 1))}`,
    `SUMMARY:${textValue(summary)}`,
    ...(description === '' ? [] : [`DESCRIPTION:${textValue(description)}`]),
    ...(url === null ? [] : [`URL:${address(url)}`]),
    `CATEGORIES:${textValue(category)}`,
    // nobody is busy because something falls due
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

/** A calendar has at least one component (RFC 5545, section 3.4): one that shows nothing. */
const EMPTY = [
  'BEGIN:VTIMEZONE',
  'TZID:Etc/UTC',
  'BEGIN:STANDARD',
  'DTSTART:19700101T000000',
  'TZOFFSETFROM:+0000',
  'TZOFFSETTO:+0000',
  'END:STANDARD',
  'END:VTIMEZONE',
];

const day = (date: string) => date.replaceAll('-', '');

/** Epoch milliseconds as a UTC date-time, to the second. */
function utc(instant: number): string {
  return new Date(instant).toISOString().replace(/[-:]|\.\d+/g, '');
}

function address(url: string): string {
  if (!/^https?:\/\/[!-~]+$/.test(url))
    throw new RangeError(`could not write an address: "${url}", it should be http or https`);
  return url;
}
