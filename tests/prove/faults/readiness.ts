import type { Fault } from '../fault.ts';

const READINESS = 'packages/engine/src/readiness';
const CAR = `${READINESS}/car-readiness.test.ts`;
const MISSING = `${READINESS}/one-thing-missing.test.ts`;

/** A car that would be called ready, or a need that would be lost. */
export const readinessFaults: Fault[] = [
  {
    name: 'what is not known does not keep a car from being ready',
    edits: [
      {
        file: `${READINESS}/verdict.ts`,
        find: "if (some('unknown'))",
        replace: "if (counted.length === 0 && some('unknown'))",
      },
    ],
    test: {
      file: `${READINESS}/verdict.test.ts`,
      name: 'verdictOf() is never ready with a blocking need that is not known, not met or waits for work',
    },
  },
  {
    name: 'drained oil is forgotten',
    edits: [
      {
        file: `${READINESS}/rules/matters.ts`,
        find: 'entry.drained !== undefined && !isFilled',
        replace: 'entry.drained === undefined && !isFilled',
      },
    ],
    test: {
      file: MISSING,
      name: 'one thing missing oil drained and nothing filled stops it, or is advice',
    },
  },
  {
    name: 'an open incident can be taken upon oneself',
    edits: [
      {
        file: `${READINESS}/assess.ts`,
        find: '!isFixed(kind) && kind',
        replace: 'kind',
      },
    ],
    test: { file: CAR, name: 'accepting incident:soft cannot be taken upon anybody' },
  },
  {
    name: 'the way home is not counted',
    edits: [
      {
        file: `${READINESS}/known.ts`,
        find: 'driven ? far && 2 * far : 0',
        replace: '0',
      },
    ],
    test: {
      file: CAR,
      name: 'until home again a belt that lasts the day but not the way home stops it',
    },
  },
  {
    name: 'parts that come after the eve are in time',
    edits: [
      {
        file: `${READINESS}/draft.ts`,
        find: 'doneBy <= event.latest',
        replace: 'doneBy >= today',
      },
    ],
    test: {
      file: CAR,
      name: 'time and parts is not in time where the parts take longer than the eve',
    },
  },
  {
    name: 'pads are judged by what is likely left, not cautiously',
    edits: [
      {
        file: 'packages/engine/src/gear/wear-rate/wear-after.ts',
        find: 'cautious: after?.low ?? null',
        replace: 'cautious: (after?.low ?? 0) + 3',
      },
    ],
    test: {
      file: MISSING,
      name: 'one thing missing pads that end below three millimetres stops it, or is advice',
    },
  },
  {
    name: 'an unbedded set of pads is advice at the circuit too',
    edits: [
      {
        file: `${READINESS}/usual-requirements.ts`,
        find: "circuit: ['padStart', 'inspection']",
        replace: "circuit: ['padStart', 'inspection', 'bedding']",
      },
    ],
    test: {
      file: MISSING,
      name: 'one thing missing a pad set that is not bedded stops it, or is advice',
    },
  },
  {
    name: 'wheels are torqued after the pads are bedded',
    edits: [
      {
        file: `${READINESS}/work-list.ts`,
        find: '.sort((a, b) => placeOf(a) - placeOf(b))',
        replace: '.sort((a, b) => placeOf(b) - placeOf(a))',
      },
    ],
    test: {
      file: `${READINESS}/readiness.properties.test.ts`,
      name: 'carReadiness() on logs of any kind lists each open need once, in the order of work',
    },
  },
  {
    name: 'somebody takes upon himself what forbids driving',
    edits: [
      {
        file: 'packages/api/src/event/accept.ts',
        find: 'if (!need.mayAccept)',
        replace: 'if (false)',
      },
    ],
    test: {
      file: 'tests/integration/api-readiness.test.ts',
      name: 'event.accept is refused for doNotDrive',
    },
  },
  {
    name: 'the first tick of a line decides',
    edits: [
      {
        file: 'packages/db/src/ticks/tick.ts',
        find: '{ and, asc, eq,',
        replace: '{ and, asc, desc, eq,',
      },
      { file: 'packages/db/src/ticks/tick.ts', find: 'asc(sql`', replace: 'desc(sql`' },
    ],
    test: {
      file: 'tests/integration/api-ticks.test.ts',
      name: 'a tick that waited for a signal stands where it was made, and a clock ahead gains nothing',
    },
  },
  {
    name: 'what the road asks changes and no car is counted anew',
    edits: [
      {
        file: 'packages/api/src/requirements/change.ts',
        find: "if (input.use === 'road')",
        replace: 'if (false)',
      },
    ],
    test: {
      file: 'tests/integration/api-requirements.test.ts',
      name: 'what the road asks concerns every car, what an event asks none',
    },
  },
  {
    name: 'the worker leaves out the parts on a car',
    edits: [
      {
        file: 'packages/db/src/readiness/road.ts',
        find: 'workOutPieces(shelf, on)',
        replace: 'workOutPieces(shelf, on.slice(0, 0))',
      },
    ],
    test: {
      file: 'tests/integration/jobs-road.test.ts',
      name: 'readiness for the road follows the parts that are on the car, as they change',
    },
  },
  {
    name: 'the car that a part left is not counted anew',
    edits: [
      {
        file: 'packages/api/src/entry/record.ts',
        find: '[...before, ...(await carsCarrying(writing, [entry]))]',
        replace: 'await carsCarrying(writing, [entry])',
      },
    ],
    test: {
      file: 'tests/integration/jobs-road.test.ts',
      name: 'what raises a car’s version a part that moves raises the car it leaves and the one it goes on, and no other',
    },
  },
];
