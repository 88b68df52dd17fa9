import { register } from 'tsx/esm/api';

// Forecasts of many made-up cars against what their own lives bring: `npm run torture -- CARS` (2,000 unless
// said otherwise). `npm run torture -- nights ROUNDS` kills the worker in so many nights instead (50 unless said
// otherwise); without an argument both are done. It prints what it finds and fails only where it could find nothing; the share that must
// hold is tested by `tests/reference/coverage`.
register();
const [what, rounds] = process.argv.slice(2);
if (what !== 'nights') {
  const { torture } = await import('./torture.ts');
  torture(Number(what ?? 2000));
}
if (what === undefined || what === 'nights') {
  const { killNights } = await import('./kill-nights.ts');
  await killNights(Number(rounds ?? 50));
}
process.exit(process.exitCode ?? 0);
