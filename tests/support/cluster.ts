import { chmodSync, mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { TestProject } from 'vitest/node';
import { type Cluster, startCluster } from '../../apps/launcher/src/postgres/cluster.ts';

export type ClusterAddress = { port: number; password: string };

declare module 'vitest' {
  interface ProvidedContext {
    cluster: ClusterAddress;
  }
}

/** A PostgreSQL of its own in a folder of its own, gone after `stop()`. */
export async function temporaryCluster(
  settings: Record<string, string> = {},
): Promise<Cluster & { password: string }> {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'quartermark-test-'));
  chmodSync(folder, 0o711);
  const password = 'only-for-tests';
  const cluster = await startCluster({
    folder,
    password,
    say: () => {},
    // the data dies with the run: fsync would only cost time
    settings: { fsync: 'off', full_page_writes: 'off', max_connections: '200', ...settings },
  });
  const stop = async () => {
    await cluster.stop();
    rmSync(folder, { recursive: true, force: true });
  };
  return { ...cluster, password, stop };
}

/** One server for all the tests of a run; each test file makes a database of its own in it. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const cluster = await temporaryCluster();
  project.provide('cluster', { port: cluster.port, password: cluster.password });
  return cluster.stop;
}
