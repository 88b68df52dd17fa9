import { register } from 'tsx/esm/api';

register();
const { main } = await import('./export.ts');
await main(process.argv.slice(2));
