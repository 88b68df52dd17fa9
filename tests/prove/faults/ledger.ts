import type { Fault } from '../fault.ts';

const OIL = 'packages/engine/src/oil';

/** An oil level or a rate that would be wrong, or surer than it is. */
export const ledgerFaults: Fault[] = [
  {
    name: 'a gross error is weighed like a sound reading',
    edits: [
      {
        file: `${OIL}/filter.ts`,
        find: 'weight * f - weight * (1 - weight) * v * v',
        replace: 'weight * f',
      },
    ],
    test: {
      file: 'tests/reference/oil-filter.test.ts',
      name: 'update() with a share of gross errors has the exact moments of a mixture in which an outlier tells nothing',
    },
  },
  {
    name: 'a drive uses what the median rate makes of it, not the mean',
    edits: [
      {
        file: `${OIL}/drive.ts`,
        find: 'Math.min(mean + variance / 2, EXPONENT_MAX)',
        replace: 'Math.min(mean, EXPONENT_MAX)',
      },
    ],
    test: {
      file: 'tests/reference/oil-moments.test.ts',
      name: 'driveBy() has the mean and the covariances of what is drawn, on the road',
    },
  },
  {
    name: 'two readings that agree that the level moved are doubted for ever',
    edits: [
      {
        file: `${OIL}/observe.ts`,
        find: '} else h.outlier = v;',
        replace: '} else h.outlier = -v;',
      },
    ],
    test: {
      file: `${OIL}/observe.test.ts`,
      name: 'observe() of a reading far from what is expected believes it the second time: 0.5 is movedUp',
    },
  },
  {
    name: 'every reading off the procedure counts, so that a habit becomes certainty',
    edits: [
      {
        file: `${OIL}/to-operations.ts`,
        find: 'if (seen.offSeen) return',
        replace: 'if (false) return',
      },
    ],
    test: {
      file: `${OIL}/to-operations.test.ts`,
      name: 'toOperations() of levels that cannot be compared observes only the first, and lists those that follow',
    },
  },
  {
    name: 'nothing on the stick is no low oil where the reading is corrected',
    edits: [
      {
        file: `${OIL}/ledger.ts`,
        find: "state.lowRead = read.level === 'none' || levelL",
        replace: 'state.lowRead = levelL',
      },
    ],
    test: {
      file: `${OIL}/ledger.test.ts`,
      name: 'the oil is low is said by an empty stick wherever its level is corrected to, and above MIN by no level',
    },
  },
  {
    name: 'an alert of rising use closes as soon as its chance falls below where it opened',
    edits: [{ file: `${OIL}/ledger.ts`, find: 'RISE_OVER = 0.42', replace: 'RISE_OVER = 0.7' }],
    test: {
      file: `${OIL}/ledger.test.ts`,
      name: 'watchRise() opens at 0.70 and closes below 0.42: [0.2,0.71,0.5,0.9,0.43]',
    },
  },
  {
    name: 'steps of the rate are merged away without their weight',
    edits: [
      {
        file: `${OIL}/bank.ts`,
        find: '    giveWeight(slots[0] as Hypothesis, from);\n',
        replace: '',
      },
    ],
    test: {
      file: `${OIL}/bank.test.ts`,
      name: 'tidy() gives the weight of the only step of its direction to the base',
    },
  },
  {
    name: 'a checkpoint counts whatever was amended before it',
    edits: [
      {
        file: `${OIL}/checkpoints.ts`,
        find: 'hashes[count] === hash',
        replace: 'count < hashes.length',
      },
    ],
    test: {
      file: `${OIL}/checkpoints.test.ts`,
      name: 'resumeLedger() begins before the entry that was amended, to the same bits',
    },
  },
  {
    name: 'the drawn past knows only the last step of the rate',
    edits: [
      {
        file: `${OIL}/hypothesis.ts`,
        find: '    to.outlier = from.outlier;\n    to.steps = from.steps;\n  }',
        replace: '    to.outlier = from.outlier;\n  }',
      },
    ],
    test: {
      file: `${OIL}/past-level.test.ts`,
      name: 'pastLevels() keeps to the readings long after a step that has been taken into the rate',
    },
  },
];
