import { register } from 'tsx/esm/api';

// Forecasts of many made-up cars against what their own lives bring: `npm run torture -- CARS` (2,000 unless
// said otherwise). It prints what it finds and fails only where it could find nothing; the share that must
// hold is tested by `tests/reference/coverage`.
register();
const { torture } = await import('./torture.ts');
torture(Number(process.argv[2] ?? 2000));
