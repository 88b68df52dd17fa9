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
];
