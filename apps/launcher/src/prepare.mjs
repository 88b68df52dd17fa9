import { register } from 'tsx/esm/api';

register();
const { prepare } = await import('./prepare.ts');
await prepare();
