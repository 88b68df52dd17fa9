import type { Fault } from '../fault.ts';

const FORECAST = 'packages/engine/src/forecast';

/** Days that would be wrong: work said to be further off than it is, or surer than anybody can be. */
export const forecastFaults: Fault[] = [
  {
    name: 'the forecast knows no season but the usual one',
    edits: [
      {
        file: `${FORECAST}/season-profile.ts`,
        find: 'const level = expected > 0 ? used / expected : 0;',
        replace: 'const level = expected > 0 ? 0 * used : 0;',
      },
    ],
    test: {
      file: `${FORECAST}/season-profile.test.ts`,
      name: 'seasonProfile() shrinks to the prior and smooths over the neighbours, by hand',
    },
  },
  {
    name: 'the forecast counts planned events once more among those that are not planned',
    edits: [
      {
        file: `${FORECAST}/measure-fit.ts`,
        find: '(occasions.rate(today + ahead) * notYetPlanned(season.habit, ahead)) / occasion',
        replace: '(occasions.rate(today + ahead) * notYetPlanned(season.habit, 1e9)) / occasion',
      },
    ],
    test: {
      file: `${FORECAST}/measure-fit.test.ts`,
      name: 'fitMeasure() of occasions expects fewer unplanned ones soon of somebody who plans, and as many later',
    },
  },
  {
    name: 'the forecast lets a chance fall again from one day to the next',
    edits: [
      {
        file: `${FORECAST}/first-day.ts`,
        find: 'const upper = Math.max(lower, chance(checkpoint));\n    if (checkpoint === ahead)',
        replace: 'const upper = chance(checkpoint);\n    if (checkpoint === ahead)',
      },
    ],
    test: {
      file: `${FORECAST}/first-day.test.ts`,
      name: 'runningChance() does not fall where the probability dips',
    },
  },
  {
    name: 'the forecast counts use before an unread service to the interval after it',
    edits: [
      {
        file: `${FORECAST}/limit-reached.ts`,
        find: 'remaining + fit.unreadUntil(service.day)',
        replace: 'remaining + 0 * fit.unreadUntil(service.day)',
      },
    ],
    test: {
      file: `${FORECAST}/limit-reached.test.ts`,
      name: 'leftAtLastReading() by what falls due leaves what was driven before a service after the last reading to the old interval',
    },
  },
  {
    name: 'the forecast forgets what was driven since an old reading',
    edits: [
      {
        file: `${FORECAST}/measure-fit.ts`,
        find: 'now: unreadUntil(asOfDay)',
        replace: 'now: 0 * unreadUntil(asOfDay)',
      },
    ],
    test: {
      file: `${FORECAST}/parked.properties.test.ts`,
      name: 'a car that stands still is never called fine for good where nobody reads it',
    },
  },
  {
    name: 'the forecast dates a hard-use limit by the earlier of limit and switch (min for max)',
    edits: [
      {
        file: `${FORECAST}/when-reached.ts`,
        find: 'Math.max(one, other)',
        replace: 'Math.min(one, other)',
      },
    ],
    test: {
      file: `${FORECAST}/limit-reached.test.ts`,
      name: 'switchReached() by the limit lets a hard-use limit count from the day its switch is likely, not before',
    },
  },
  {
    name: 'the forecast drops an event of last week that nobody wrote down',
    edits: [
      {
        file: `${FORECAST}/planned-occasions.ts`,
        find: 'asOfDay - end > PENDING_DAYS',
        replace: 'asOfDay - end > 0 * PENDING_DAYS',
      },
    ],
    test: {
      file: `${FORECAST}/edge-cases-plan.test.ts`,
      name: 'what falls due with events on the calendar an event just past without a session: counted as if it had been, for two weeks',
    },
  },
  {
    name: 'the forecast asks whether an event lasts as if it might not take place',
    edits: [
      {
        file: `${FORECAST}/chance-reached.ts`,
        find: 'if (event.id === attended) {',
        replace: 'if (event.id === attended && event.attend >= 1) {',
      },
    ],
    test: {
      file: `${FORECAST}/chance-reached.test.ts`,
      name: 'lookAhead() takes the event asked about as certain, whatever its chance',
    },
  },
  {
    name: 'the forecast calls ready what rests on a lower bound',
    edits: [
      {
        file: `${FORECAST}/at-event.ts`,
        find: 'unknown ? null : true',
        replace: 'unknown ? true : true',
      },
    ],
    test: {
      file: `${FORECAST}/at-event.test.ts`,
      name: 'projectToEvent() where something is not known is not ready where even the lower bound says so, else unknown',
    },
  },
  {
    name: 'the forecast takes the level of use as certain',
    edits: [
      {
        file: `${FORECAST}/chance-reached.ts`,
        find: '{ fixed: 0.05, perYear: 0.06, perWeekSeen: 1.2, weeks: 4 }',
        replace: '{ fixed: 0, perYear: 0, perWeekSeen: 0, weeks: 4 }',
      },
    ],
    test: {
      file: 'tests/reference/coverage/coverage.test.ts',
      name: 'the band of a due date, one limit each of 200 cars holds the true day as often as it says',
    },
  },
];
