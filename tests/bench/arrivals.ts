const LONGEST_MS = 10_000;

/** News of cars as they come in, and whoever waits for them. */
export class Arrivals {
  private readonly waiting = new Set<(carId: string, version: number, at: number) => void>();
  private readonly last = new Map<string, { version: number; at: number }>();

  arrived(carId: string, version: number): void {
    const at = performance.now();
    this.last.set(carId, { version, at });
    for (const tell of this.waiting) tell(carId, version, at);
  }

  /** @returns the moment at which this version, or a later one, came in; it may have been before */
  of(carId: string, version: number): Promise<number> {
    const seen = this.last.get(carId);
    if (seen && seen.version >= version) return Promise.resolve(seen.at);
    return new Promise((resolve, reject) => {
      const late = setTimeout(() => {
        this.waiting.delete(tell);
        reject(new Error(`version ${version} of car ${carId} did not come in ${LONGEST_MS} ms`));
      }, LONGEST_MS);
      const tell = (car: string, found: number, at: number) => {
        if (car !== carId || found < version) return;
        clearTimeout(late);
        this.waiting.delete(tell);
        resolve(at);
      };
      this.waiting.add(tell);
    });
  }
}
