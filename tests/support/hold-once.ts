import type { Point } from '@quartermark/jobs/worker';

/** Holds the first job that comes to a point, until it is let go. */
export function holdOnce(at: Point) {
  let holding = false;
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  return {
    reached: async (point: Point): Promise<void> => {
      if (point !== at || holding) return;
      holding = true;
      await held;
    },
    holding: () => holding,
    letGo: () => letGo(),
  };
}
