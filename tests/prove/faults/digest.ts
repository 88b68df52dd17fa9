import type { Fault } from '../fault.ts';

const DIGEST = 'packages/digest/src';
const FEED = 'tests/reference/digest-feed.test.ts';
const HOURS = 'tests/reference/digest-hours.test.ts';

/** A letter that nags, hides, tells a stranger or comes twice; a feed that a calendar cannot read. */
export const digestFaults: Fault[] = [
  {
    name: 'a letter repeats what it said the day before',
    edits: [
      {
        file: `${DIGEST}/letter/to-tell.ts`,
        find: "addDays(said.on, AGAIN_DAYS) <= today ? 'again'",
        replace: "addDays(said.on, 1) <= today ? 'again'",
      },
    ],
    test: {
      file: `${DIGEST}/letter/compose.properties.test.ts`,
      name: 'compose(), night after night repeats nothing within a week unless it is worse, is news of a verdict, or was asked for',
    },
  },
  {
    name: 'a letter keeps silent of what became worse while it was put off',
    edits: [
      {
        file: `${DIGEST}/letter/to-tell.ts`,
        find: 'quiet.until < today || grade > quiet.grade) return false',
        replace: 'quiet.until < today) return false',
      },
    ],
    test: {
      file: `${DIGEST}/letter/compose.test.ts`,
      name: 'compose() tells at once what became worse, also of what was put off',
    },
  },
  {
    name: 'a letter never comes back to what was put off until Saturday',
    edits: [
      {
        file: `${DIGEST}/letter/to-tell.ts`,
        find: 'quiet.until < today && said.on <= quiet.until',
        replace: 'quiet.until < today && said.on > quiet.until',
      },
    ],
    test: {
      file: `${DIGEST}/nights.test.ts`,
      name: '30 nights of an invented garage give its owner exactly the letters that were written down beforehand',
    },
  },
  {
    name: 'a letter counts as said what found no room in it',
    edits: [
      {
        file: `${DIGEST}/letter/compose.ts`,
        find: 'shownIds.has(id) ?',
        replace: 'shownIds.size > 0 ?',
      },
    ],
    test: {
      file: `${DIGEST}/letter/compose.properties.test.ts`,
      name: 'compose() with many cars of 5 keeps to its lines, counts the rest and tells it on the following nights',
    },
  },
  {
    name: 'a letter has one line more than it may, where the rest is counted',
    edits: [
      {
        file: `${DIGEST}/letter/compose.ts`,
        find: 'shown: lines.slice(0, most - 1), rest: lines.slice(most - 1)',
        replace: 'shown: lines.slice(0, most), rest: lines.slice(most)',
      },
    ],
    test: {
      file: `${DIGEST}/letter/compose.properties.test.ts`,
      name: 'compose() with many cars of 17 keeps to its lines, counts the rest and tells it on the following nights',
    },
  },
  {
    name: 'a letter tells a member of cars that only others may see',
    edits: [
      {
        file: `${DIGEST}/letter/compose.ts`,
        find: 'garage.cars.filter((car) => may.has(car))',
        replace: 'garage.cars.filter((car) => may.size > 0 || may.has(car))',
      },
    ],
    test: {
      file: `${DIGEST}/letter/compose.properties.test.ts`,
      name: 'compose(), night after night tells only of cars that its reader may see, also in counts and words for the rest',
    },
  },
  {
    name: 'a letter hangs on the order in which the facts come',
    edits: [
      {
        file: `${DIGEST}/letter/to-lines.ts`,
        find: 'compare(a.told.fact.id, b.told.fact.id)',
        replace: '0',
      },
      {
        file: `${DIGEST}/letter/to-lines.ts`,
        find: "compare(a.words.name ?? '', b.words.name ?? '') ||",
        replace: '',
      },
    ],
    test: {
      file: `${DIGEST}/letter/compose.properties.test.ts`,
      name: 'compose(), night after night is the same letter whatever the order of facts',
    },
  },
  {
    name: 'a laid-up car is told of like one in use',
    edits: [
      {
        file: `${DIGEST}/facts/due-facts.ts`,
        find: 'isInUse(lane.status) ? lines : lines.filter(runsOutStanding)',
        replace: 'isInUse(lane.status) ? lines : lines.filter((line) => line !== null)',
      },
    ],
    test: {
      file: `${DIGEST}/facts/facts-of-car.test.ts`,
      name: 'factsOfCar() has only papers and the battery of a car that is laidUp',
    },
  },
  {
    name: 'an item done anew and overdue again counts as told already',
    edits: [
      {
        file: `${DIGEST}/facts/due-facts.ts`,
        find: "lastDone ?? 'never'",
        replace: "lastDone === null ? 'never' : 'done'",
      },
    ],
    test: {
      file: `${DIGEST}/facts/facts-of-car.test.ts`,
      name: 'factsOfCar() names what is overdue by what it was last done, so that done again it is another fact',
    },
  },
  {
    name: 'a car that is still of yesterday counts as worked out',
    edits: [
      {
        file: `${DIGEST}/facts/facts-of-car.ts`,
        find: 'known.asOf < today ? known.asOf : null',
        replace: 'known.asOf > today ? known.asOf : null',
      },
    ],
    test: {
      file: `${DIGEST}/facts/facts-of-car.test.ts`,
      name: 'factsOfCar() says that a car failed, or is still of yesterday',
    },
  },
  {
    name: 'what forbids driving can be put off',
    edits: [
      {
        file: `${DIGEST}/facts/facts-of-car.ts`,
        find: 'mayLayAside(urgent) ? putOff(car.putOffs, id) : null',
        replace: 'mayLayAside(urgent) || true ? putOff(car.putOffs, id) : null',
      },
    ],
    test: {
      file: `${DIGEST}/facts/facts-of-car.test.ts`,
      name: 'factsOfCar() lets nobody put off what forbids driving',
    },
  },
  {
    name: 'a letter takes a name that somebody typed for HTML',
    edits: [
      {
        file: `${DIGEST}/parts/html-part.ts`,
        find: 'wrap(escaped(text), WIDTH)',
        replace: 'wrap(text, WIDTH)',
      },
    ],
    test: {
      file: `${DIGEST}/parts/parts.properties.test.ts`,
      name: 'textPart() and htmlPart() of one letter say the same words, and what people typed stays words',
    },
  },
  {
    name: 'a name with a line break adds a header to the letter',
    edits: [
      {
        file: `${DIGEST}/letter/plain.ts`,
        find: "typed.replace(/\\s+/g, ' ').replace(HIDDEN, '')",
        replace: 'typed',
      },
    ],
    test: {
      file: `${DIGEST}/parts/parts.properties.test.ts`,
      name: 'textPart() and htmlPart() of one letter fetch nothing, run nothing, and have a subject of one line',
    },
  },
  {
    name: 'a garage that moved to the west has two letters of one date',
    edits: [
      {
        file: `${DIGEST}/hours/night.ts`,
        find: 'last !== null && date <= last',
        replace: 'last !== null && date === last',
      },
    ],
    test: {
      file: HOURS,
      name: 'nightDue(), ticked every half hour never gives a date two letters, nor leaves one out, after a move from Europe/London to America/New_York',
    },
  },
  {
    name: 'nights that nobody ticked in are not counted',
    edits: [
      {
        file: `${DIGEST}/hours/night.ts`,
        find: 'day < date; day = addDays(day, 1)',
        replace: 'day < date && day > date; day = addDays(day, 1)',
      },
    ],
    test: {
      file: HOURS,
      name: 'nightDue(), ticked every half hour makes up for nights nobody ticked in by one letter, which leaves at once',
    },
  },
  {
    name: 'an hour that comes twice is the second of the two',
    edits: [
      {
        file: 'packages/engine/src/calendar/zone.ts',
        find: "disambiguation: 'compatible'",
        replace: "disambiguation: 'later'",
      },
    ],
    test: {
      file: HOURS,
      name: "sendsAt() is the hour of '2026-11-01T01:30' in 'America/New_York' ('overlap (occurs twice)')",
    },
  },
  {
    name: 'a feed is folded at 76 octets',
    edits: [
      {
        file: `${DIGEST}/feed/content-line.ts`,
        find: 'LINE_OCTETS = 75',
        replace: 'LINE_OCTETS = 76',
      },
    ],
    test: {
      file: FEED,
      name: 'calendarFeed() folds at 75 octets, and not inside a character',
    },
  },
  {
    name: 'a feed counts characters where octets are meant',
    edits: [
      {
        file: `${DIGEST}/feed/content-line.ts`,
        find: 'code < 0x80 ? 1 : code < 0x800 ? 2',
        replace: 'code < 0x80 ? 1 : code < 0x800 ? 1',
      },
    ],
    test: {
      file: FEED,
      name: 'calendarFeed() keeps to lines of 75 octets with whole characters, and is read back letter for letter',
    },
  },
  {
    name: 'a feed leaves commas and semicolons as they were typed',
    edits: [
      {
        file: `${DIGEST}/feed/content-line.ts`,
        find: '.replace(/[\\\\;,]/g',
        replace: '.replace(/[\\\\]/g',
      },
    ],
    test: {
      file: FEED,
      name: 'calendarFeed() writes an entry word for word',
    },
  },
  {
    name: 'an entry that moved keeps its sequence, so that calendars keep the old day',
    edits: [
      {
        file: `${DIGEST}/feed/revise.ts`,
        find: 'sequence: sequence + 1',
        replace: 'sequence: sequence + 0',
      },
    ],
    test: {
      file: FEED,
      name: 'revise(), read by another program replaces an entry that moved, under its UID',
    },
  },
  {
    name: 'an all-day entry ends on its last day, so that calendars show one day less',
    edits: [
      {
        file: `${DIGEST}/feed/calendar.ts`,
        find: 'day(addDays(end, 1))',
        replace: 'day(addDays(end, 0))',
      },
    ],
    test: {
      file: FEED,
      name: 'calendarFeed() ends the day after the last, as calendars count',
    },
  },
  {
    name: 'a feed shows a member the cars of others',
    edits: [
      {
        file: `${DIGEST}/feed/feed-entries.ts`,
        find: "member.cars === 'all' || member.cars.includes(car)",
        replace: "member.cars === 'all' || member.cars.length > 0 || car === ''",
      },
    ],
    test: {
      file: `${DIGEST}/feed/feed-entries.test.ts`,
      name: 'feedEntries() has nothing of a car that its reader may not see, nor an event of such cars alone',
    },
  },
];
