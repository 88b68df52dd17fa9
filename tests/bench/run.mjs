import { register } from 'tsx/esm/api';

// Measures, compares and says which goals are met, then the letters of a night of 1,000 cars and of 100,000 by one
// worker and by two. `npm run bench -- entries` leaves the letters out, `npm run bench -- digests CARS` measures them
// alone, `npm run bench -- midnight CARS` a night of 10,000 cars or so many. A goal that is missed is no failure:
// figures of a busy machine are no reason to stop anything. What could not be measured is one.
register();
const [what = 'all', cars] = process.argv.slice(2);
const parts = {
  async entries() {
    const { bench } = await import('./bench.ts');
    await bench();
  },
  async digests() {
    const { digests } = await import('./digests.ts');
    await digests(cars === undefined ? [1_000, 100_000] : [Number(cars)]);
  },
  async midnight() {
    const { midnight } = await import('./midnight.ts');
    await midnight(Number(cars ?? 10_000));
  },
  async all() {
    await parts.entries();
    await parts.digests();
  },
};
if (!Object.hasOwn(parts, what)) {
  console.error(
    `There is nothing called "${what}" to measure; choose ${Object.keys(parts).join(', ')}.`,
  );
  process.exit(1);
}
await parts[what]();
process.exit(0);
