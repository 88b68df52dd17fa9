/** Test build only: stops for ever at a point, so that a test can kill the process right there. */
export function pauseAt(wanted: string): (point: string) => Promise<void> {
  return (point) => {
    if (point !== wanted) return Promise.resolve();
    process.stdout.write(`paused at ${point}\n`);
    return new Promise(() => {});
  };
}
