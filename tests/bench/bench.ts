import { temporaryCluster } from '../support/cluster.ts';
import { BACKENDS } from '../support/jobs-worker.ts';
import { buildTestWorker } from '../support/worker-process.ts';
import { analysisFinding } from './analysis.ts';
import { webBuiltAt } from './door.ts';
import { type Finding, HEAD, rowOf } from './finding.ts';
import { forecastFindings } from './forecast.ts';
import { appendRows, ledgerFinding } from './ledger.ts';
import { Line } from './line.ts';
import { overviewFindings } from './overview.ts';
import { readinessFinding } from './readiness.ts';
import { table } from './table.ts';

const ROUNDS = 200;
const WARM_UP = 30;
/** Rounds end here, however many there were. */
const ROUNDS_MS = 90_000;
const WHOLE_MS = 230_000;
const GARAGES = [1_000, 10_000];

/** Measures the ways an entry takes and the questions asked most, and prints one table. */
export async function bench(): Promise<void> {
  const late = setTimeout(() => {
    console.error(`The bench did not end within ${WHOLE_MS / 1000} s; this machine is too busy.`);
    process.exit(1);
  }, WHOLE_MS);
  const began = performance.now();
  const built = webBuiltAt();
  sayHow(built);
  buildTestWorker();
  // as in use: what is acknowledged is on the disk
  const cluster = await temporaryCluster({ fsync: 'on', full_page_writes: 'on' });
  const lines: Line[] = [];
  try {
    for (const { backend, here } of BACKENDS)
      if (here) lines.push(await Line.open(cluster, backend, built !== null));
    await interleave(lines);
    const findings = lines.flatMap(latencies);
    const [first] = lines;
    if (!first) throw new Error('there is no queue to measure');
    findings.push(...(await overviewFindings(first, GARAGES)), await analysisFinding(first));
    findings.push(...(await forecastFindings()), await ledgerFinding(), await readinessFinding());
    show(findings, await appendRows(), lines[0]?.took.empty.length ?? 0, began);
  } finally {
    await Promise.allSettled(lines.map((line) => line.close()));
    await cluster.stop();
    clearTimeout(late);
  }
}

function sayHow(built: Date | null): void {
  console.log(
    built
      ? `Entries come in and news go out through the web app over HTTP, as built ${built.toISOString()}.`
      : 'The web app is not built for tests (node tests/support/build.mjs test): entries go straight into the api of this process, and news come from its own hub.',
  );
  for (const { backend, here } of BACKENDS)
    if (!here)
      console.log(`SKIPPED: ${backend}, which is missing. Mend: apt-get install redis-server`);
}

/** One round on each engine in turn, so that whatever else this machine does falls on both. */
async function interleave(lines: readonly Line[]): Promise<void> {
  for (let round = 0; round < WARM_UP; round += 1) for (const line of lines) await line.round();
  for (const line of lines) line.forget();
  const began = performance.now();
  for (let round = 0; round < ROUNDS && performance.now() - began < ROUNDS_MS; round += 1)
    for (const line of lines) await line.round();
}

function latencies({ backend, took }: Line): Finding[] {
  const beside = {
    what: `an empty job of BullMQ on ${backend}, there and back: published, taken up, done`,
    took: took.empty,
  };
  const goal = { ratio: 3 };
  return [
    { what: `commit to snapshot, ${backend}`, took: took.commitToSnapshot, beside, goal },
    { what: `entry to screen, ${backend}`, took: took.entryToScreen, beside, goal },
  ];
}

function show(
  findings: readonly Finding[],
  appends: readonly string[][],
  rounds: number,
  began: number,
): void {
  const besides = new Map<string, string[]>();
  for (const { what, beside } of findings)
    besides.set(beside.what, [...(besides.get(beside.what) ?? []), what]);
  console.log();
  for (const [beside, whats] of besides) console.log(`${whats.join('; ')}:\n  beside ${beside}`);
  console.log(`\n${table([HEAD, ...findings.map(rowOf)])}\n`);
  console.log(
    `The oil ledger where an entry is appended; its steps must not grow:\n\n${table(appends)}\n`,
  );
  const seconds = ((performance.now() - began) / 1000).toFixed(0);
  console.log(`${rounds} rounds on each queue, ${seconds} s in all`);
}
