import { register } from 'tsx/esm/api';

// Measures, compares and says which goals are met; `npm run bench -- midnight CARS` measures a night of 10,000
// cars or so many, by one worker and by two; `npm run bench -- digests CARS` the letters of such a night, of 1,000
// and of 100,000 cars where no number is given. A goal that is missed is no failure: figures of a busy machine are
// no reason to stop anything. What could not be measured is one.
register();
const [what, cars] = process.argv.slice(2);
if (what === 'midnight') {
  const { midnight } = await import('./midnight.ts');
  await midnight(Number(cars ?? 10_000));
} else if (what === 'digests') {
  const { digests } = await import('./digests.ts');
  await digests(cars === undefined ? [1_000, 100_000] : [Number(cars)]);
} else {
  const { bench } = await import('./bench.ts');
  await bench();
}
process.exit(0);
