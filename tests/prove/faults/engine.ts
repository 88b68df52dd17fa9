import type { Fault } from '../fault.ts';

const WEAR = 'packages/engine/src/wear';
const HISTORY = 'packages/engine/src/history';
const LOG = 'packages/engine/src/log';
const MATTERS = 'packages/engine/src/matters';
const GEAR = 'packages/engine/src/gear';
const LIBRARY = 'packages/engine/src/library';
const wears = `${WEAR}/analyse-case.test.ts`;

/** Figures that would be wrong: work said to be further off than it is, or the other way round. */
export const engineFaults: Fault[] = [
  {
    name: 'the weight of a class is dropped',
    edits: [
      {
        file: `${WEAR}/accrue.ts`,
        find: '(weights[it.useClass] ?? 1) * amountOf(it, measure)',
        replace: 'amountOf(it, measure)',
      },
    ],
    test: {
      file: wears,
      name: 'analyseCase() adding up weighs each class, tells them apart and says what was derived',
    },
  },
  {
    name: 'a limit reached exactly is not over (> for >=)',
    edits: [
      {
        file: `${WEAR}/state-of.ts`,
        find: 'limit.accrued >= limit.limit',
        replace: 'limit.accrued > limit.limit',
      },
    ],
    test: {
      file: wears,
      name: 'analyseCase() at a limit is overdue where a limit is reached exactly, on the day it was',
    },
  },
  {
    name: 'the day a calendar limit runs out counts as overdue (>= for >)',
    edits: [
      {
        file: `${WEAR}/state-of.ts`,
        find: 'asOfDay > parseDay(limit.dueDate)',
        replace: 'asOfDay >= parseDay(limit.dueDate)',
      },
    ],
    test: {
      file: wears,
      name: 'analyseCase() at a limit is valid through the day a calendar limit runs out, overdue on the next',
    },
  },
  {
    name: 'a hard-use switch that cannot be judged counts as good',
    edits: [
      {
        file: `${WEAR}/state-of.ts`,
        find: 'all.some(({ known }) => !known)',
        replace: 'inForce.some(({ known }) => !known)',
      },
    ],
    test: {
      file: `${WEAR}/is-known.test.ts`,
      name: 'analyseCase() where something is not known never lets a hard-use switch that cannot be judged count as good',
    },
  },
  {
    name: 'the figures put an untimed service before the uses of its day',
    edits: [
      {
        file: `${HISTORY}/placed.ts`,
        find: 'serviceWithoutReading: 40',
        replace: 'serviceWithoutReading: 5',
      },
    ],
    test: {
      file: wears,
      name: 'analyseCase() adding up counts sessions before an untimed service of their day as before it, and says so',
    },
  },
  {
    name: 'the list puts an untimed service before the uses of its day',
    edits: [
      {
        file: `${LOG}/sort-entries.ts`,
        find: 'meterReset: 30, other: 40',
        replace: 'meterReset: 30, other: 5',
      },
    ],
    test: {
      file: `${LOG}/sort-entries.test.ts`,
      name: 'sortEntries() puts an untimed use before an untimed service of its day',
    },
  },
  {
    name: 'the rest of an interval is spread into days of storage',
    edits: [
      {
        file: `${HISTORY}/fill-gaps.ts`,
        find: 'all.filter((day) => !isStored(storage, day))',
        replace: 'all.filter((day) => !isStored([], day))',
      },
    ],
    test: {
      file: `${HISTORY}/build-history.test.ts`,
      name: 'buildHistory() spreads it over the days outside storage, or over all of them if there are none',
    },
  },
  {
    name: 'every reading is kept, not the longest run that never falls',
    edits: [
      {
        file: `${HISTORY}/keep-readings.ts`,
        find: 'longestRun(segment.map(({ value }) => value))',
        replace: '[...segment.keys()]',
      },
    ],
    test: {
      file: `${HISTORY}/keep-readings.test.ts`,
      name: 'keepReadings() rejects what does not fit the longest run',
    },
  },
  {
    name: 'a mile is the US survey mile, 3 mm too long',
    edits: [{ file: `${LOG}/units.ts`, find: 'mi: 1.609344', replace: 'mi: 1.609347219' }],
    test: {
      file: 'tests/reference/units.test.ts',
      name: 'units: km per mile is the exact ratio',
    },
  },
  {
    name: 'a US quart is taken for an imperial one',
    edits: [{ file: `${LOG}/units.ts`, find: 'usQt: 0.946352946', replace: 'usQt: 1.1365225' }],
    test: {
      file: 'tests/reference/units.test.ts',
      name: 'units: L per US liquid quart is as printed to seven digits',
    },
  },
  {
    name: 'months are not clamped to the end of a shorter month',
    edits: [
      {
        file: 'packages/engine/src/calendar/add.ts',
        find: 'Math.min(day, daysInMonth(toYear, toMonth))',
        replace: 'Math.max(day, Math.min(1, daysInMonth(toYear, toMonth)))',
      },
    ],
    test: {
      file: `${WEAR}/judge-calendar.test.ts`,
      name: 'judgeCalendar() counts months from the service, clamped',
    },
  },
  {
    name: 'the day after tomorrow is let into the log',
    edits: [
      {
        file: `${LOG}/after-tomorrow.ts`,
        find: 'addDays(today, 1)',
        replace: 'addDays(today, 2)',
      },
    ],
    test: {
      file: `${LOG}/sort-entries.test.ts`,
      name: 'afterTomorrow() lets today and tomorrow through, across the end of a year',
    },
  },
  {
    name: 'the cap on a note is gone',
    edits: [
      {
        file: `${LOG}/common.ts`,
        find: 'NOTE_BYTES_MAX = 64 * 1024',
        replace: 'NOTE_BYTES_MAX = Number.MAX_SAFE_INTEGER',
      },
    ],
    test: {
      file: `${LOG}/entry.test.ts`,
      name: 'entryInput() refuses a note over 64 KB and says how to mend it',
    },
  },
  {
    name: 'what a car did before a part went on counts for the part',
    edits: [
      {
        file: `${GEAR}/part-ledger.ts`,
        find: 'position > from && position <= until',
        replace: 'position <= until',
      },
    ],
    test: {
      file: `${GEAR}/analyse-gear.test.ts`,
      name: 'analyseGear() of a set moved between two cars sums both parts and nothing else',
    },
  },
  {
    name: 'a part put on elsewhere goes on counting where it was',
    edits: [
      {
        file: `${GEAR}/fit-windows.ts`,
        find: 'window.end = by.on;',
        replace: 'window.end = by.change === "on" ? null : by.on;',
      },
    ],
    test: {
      file: `${GEAR}/fit-windows.test.ts`,
      name: 'fitWindows() keeps both facts where it is put on elsewhere while on, and counts in one place at a time',
    },
  },
  {
    name: 'what the log has of a used part counts as all it has done',
    edits: [
      {
        file: `${GEAR}/component-life.ts`,
        find: 'known: start !== null && isCovered(windows, start.position,',
        replace: 'known: isCovered(windows, start?.position ?? windows[0]?.from ?? 0,',
      },
    ],
    test: {
      file: `${GEAR}/analyse-gear.test.ts`,
      name: 'analyseGear() and what is not known has nothing on record for the items of a used part, and at least for its life',
    },
  },
  {
    name: 'a proposed limit counts track days by a tenth of what they wear',
    edits: [
      {
        file: `${LIBRARY}/engine-items.ts`,
        find: 'circuit: 12, autocross: 6',
        replace: 'circuit: 1.2, autocross: 6',
      },
    ],
    test: {
      file: `${LIBRARY}/propose-items.test.ts`,
      name: 'every proposal lasts as long by distance as by hours and by sessions',
    },
  },
  {
    name: 'week 53 of a date code is refused',
    edits: [{ file: `${GEAR}/date-code.ts`, find: 'week > 53', replace: 'week > 52' }],
    test: {
      file: 'tests/reference/tyres.test.ts',
      name: 'readDateCode() reads or refuses 5319 as 49 CFR 574.5 has it',
    },
  },
  {
    name: 'an answer of tomorrow closes a do-not-drive finding today',
    edits: [
      {
        file: `${MATTERS}/find-open.ts`,
        find: 'keptEntries(entries, asOf).flatMap(',
        replace: 'keptEntries(entries, addDays(asOf, 1)).flatMap(',
      },
    ],
    test: {
      file: `${MATTERS}/matters.test.ts`,
      name: 'findOpen() findOpen() leaves out what was answered, resolved or removed, and not what will be',
    },
  },
  {
    name: 'a lesser stop hides a do-not-drive finding',
    edits: [
      {
        file: `${MATTERS}/car-status.ts`,
        find: "if (findings.some(({ severity }) => severity === 'doNotDrive')) return 'doNotDrive';\n  if (incidents.length > 0) return 'incident';",
        replace:
          "if (incidents.length > 0) return 'incident';\n  if (findings.some(({ severity }) => severity === 'doNotDrive')) return 'doNotDrive';",
      },
    ],
    test: {
      file: `${MATTERS}/matters.properties.test.ts`,
      name: 'analyseBook() on logs of any kind stopOf() says do not drive whatever else is in the log',
    },
  },
  {
    name: 'a re-check of wheels that were off counts as checked again',
    edits: [
      {
        file: `${MATTERS}/wheel-corners.ts`,
        find: "return change === 'rechecked' && !torqued ? 'torqued' : change;",
        replace: 'return torqued ? change : change;',
      },
    ],
    test: {
      file: `${MATTERS}/wheels-state.test.ts`,
      name: 'wheelsState() wheelsState() takes a re-check of wheels that were off as their torque, to be checked again',
    },
  },
  {
    name: 'the days of an interval after the wheels were torqued do not count',
    edits: [
      {
        file: `${MATTERS}/use-since.ts`,
        find: 'position > place || (position === place && day > mark.day)',
        replace: 'position > place || (position === place && day > mark.day + 1e6)',
      },
    ],
    test: {
      file: `${MATTERS}/wheels-state.test.ts`,
      name: 'wheelsState() wheelsState() counts the days of an interval between two readings that come after',
    },
  },
  {
    name: 'a service before what happened makes its item good again',
    edits: [
      {
        file: `${WEAR}/due-at-once.ts`,
        find: 'mark.day <= asOfDay && placeOfMark(timeline, mark) > since',
        replace: 'mark.day <= asOfDay && since < 0',
      },
    ],
    test: {
      file: `${WEAR}/due-at-once.test.ts`,
      name: 'overrule() by the order of the log overrule() lets the one recorded later decide where neither has a time',
    },
  },
];
