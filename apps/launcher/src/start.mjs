import { register } from 'tsx/esm/api';

// one process, so that a signal to it is a signal to the app: TypeScript is loaded in place
register();
const { main } = await import('./main.ts');
await main();
