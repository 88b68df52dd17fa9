import { register } from 'tsx/esm/api';

// Measures, compares and says which goals are met; `npm run bench -- midnight CARS` measures a night of 10,000
// cars or so many, by one worker and by two. A goal that is missed is no failure: figures of a busy machine are
// no reason to stop anything. What could not be measured is one.
register();
const [what, cars = '10000'] = process.argv.slice(2);
if (what === 'midnight') {
  const { midnight } = await import('./midnight.ts');
  await midnight(Number(cars));
} else {
  const { bench } = await import('./bench.ts');
  await bench();
}
process.exit(0);
