export { gammaTail, logGamma } from './gamma-tail.ts';
export { overCounts } from './over-counts.ts';
