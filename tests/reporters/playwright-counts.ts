import { writeFileSync } from 'node:fs';
import type { Reporter, TestCase } from '@playwright/test/reporter';
import type { Counts } from './counts.ts';

/** The same counts as `counts.ts`, of the browser journeys. A test that passed at a second try failed. */
export default class PlaywrightCounts implements Reporter {
  private readonly tests = new Set<TestCase>();
  private errors = 0;

  onTestEnd(test: TestCase): void {
    this.tests.add(test);
  }

  onError(): void {
    this.errors += 1;
  }

  onEnd(): void {
    const file = process.env.QUARTERMARK_COUNTS;
    if (file === undefined) return;
    const counts: Counts = { passed: 0, failed: this.errors, skipped: 0 };
    for (const test of this.tests) {
      const outcome = test.outcome();
      if (outcome === 'expected') counts.passed += 1;
      else if (outcome === 'skipped') counts.skipped += 1;
      else counts.failed += 1;
    }
    writeFileSync(file, JSON.stringify(counts));
  }

  printsToStdio(): boolean {
    return false;
  }
}
