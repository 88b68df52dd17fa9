import { foldLedger, type OilOperation, resumeLedger, USUAL_PRIORS } from '@quartermark/engine/oil';
import { bareBank } from './bare-bank.ts';
import type { Finding } from './finding.ts';
import { p50, type Times, timed } from './statistics.ts';
import { ms } from './table.ts';

const ENTRIES = 2_000;
const ROUNDS = 60;
const WARM_UP = 15;
/** The base, the six steps kept, and the two just made. */
const HYPOTHESES = 9;
const LENGTHS = [100, 1_000, 10_000, 100_000];
const APPENDS = 5;

/** A look every 400 km, a bottle at every fifth. */
export function oilOperations(count: number): OilOperation[] {
  return Array.from({ length: count }, (_, at) => ({
    entry: at,
    drive: { road: 0.4, circuit: 0, runs: 0 },
    steps: [
      {
        does: 'observe' as const,
        levelL: -0.3 - 0.1 * (at % 5),
        sdL: 0.1,
        tag: 'read' as const,
        read: { level: 0.7 - 0.1 * (at % 5), condition: null, offProcedure: false },
      },
      ...(at % 5 === 4 ? [{ does: 'add' as const, volumeL: 0.5, sdL: 0.015 }] : []),
    ],
  }));
}

/** The ledger over a long log, beside the same arithmetic without anything else. */
export async function ledgerFinding(): Promise<Finding> {
  const operations = oilOperations(ENTRIES);
  const took: Times = [];
  const bare: Times = [];
  let kept = 0;
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const whole = await timed(() => {
      kept += foldLedger(1, USUAL_PRIORS, operations).state.bank.distance;
    });
    const loop = await timed(() => {
      kept += bareBank(ENTRIES, HYPOTHESES);
    });
    if (round < WARM_UP) continue;
    took.push(whole);
    bare.push(loop);
  }
  if (!Number.isFinite(kept)) throw new Error('the ledger or the bare loop came to no number');
  return {
    what: `the oil ledger, ${ENTRIES} entries`,
    took,
    beside: { what: `the arithmetic of ${HYPOTHESES} hypotheses alone, in one array`, took: bare },
    goal: { ratio: 5 },
  };
}

/** What an appended entry costs where earlier work is resumed, by how long the log is. */
export async function appendRows(): Promise<string[][]> {
  const rows = [
    ['entries', 'filter steps after an append', 'append p50', 'whole log', 'entries/s'],
  ];
  const longest = oilOperations((LENGTHS.at(-1) ?? 0) + APPENDS);
  for (const length of LENGTHS) {
    let checkpoints = resumeLedger(1, USUAL_PRIORS, longest.slice(0, length), []).checkpoints;
    const whole = await timed(() => resumeLedger(1, USUAL_PRIORS, longest.slice(0, length), []));
    const steps: number[] = [];
    const took: Times = [];
    for (let more = 1; more <= APPENDS; more += 1) {
      const operations = longest.slice(0, length + more);
      took.push(
        await timed(() => {
          const resumed = resumeLedger(1, USUAL_PRIORS, operations, checkpoints);
          steps.push(resumed.steps);
          checkpoints = resumed.checkpoints;
        }),
      );
    }
    rows.push([
      String(length),
      String(Math.max(...steps)),
      ms(p50(took)),
      ms(whole),
      ((length / whole) * 1000).toFixed(0),
    ]);
  }
  return rows;
}
