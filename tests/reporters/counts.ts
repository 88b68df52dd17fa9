import { writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';

export type Counts = { passed: number; failed: number; skipped: number };

/**
 * Writes how many tests passed, failed and were skipped to the file named in `QUARTERMARK_COUNTS`, for
 * the closing line of `npm test`. An error outside any test counts as a failure.
 */
export default class CountsReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const file = process.env.QUARTERMARK_COUNTS;
    if (file === undefined) return;
    const counts: Counts = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      // a file that could not even be loaded has no test that could fail
      if (module.state() === 'failed') counts.failed += module.errors().length;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        counts[state === 'pending' ? 'failed' : state] += 1;
      }
    }
    writeFileSync(file, JSON.stringify(counts));
  }
}
