import { register } from 'tsx/esm/api';

// Measures, compares and says which goals are met. A goal that is missed is no failure: figures of a busy
// machine are no reason to stop anything. What could not be measured is one.
register();
const { bench } = await import('./bench.ts');
await bench();
process.exit(0);
