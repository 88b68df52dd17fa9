/** What has to be undone at the end, in the reverse order of its doing, once. */
export function stops() {
  const steps: (() => Promise<void> | void)[] = [];
  let running: Promise<void> | null = null;
  const run = async () => {
    for (let step = steps.pop(); step !== undefined; step = steps.pop()) {
      try {
        await step();
      } catch (error) {
        console.error(error instanceof Error ? error.message : error);
      }
    }
  };
  return {
    add(step: () => Promise<void> | void) {
      steps.push(step);
    },
    all(): Promise<void> {
      running ??= run();
      return running;
    },
    get begun() {
      return running !== null;
    },
  };
}
