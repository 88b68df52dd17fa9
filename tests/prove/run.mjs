import { register } from 'tsx/esm/api';

// Plants faults one by one and shows that a named test catches each; `npm run prove -- WORDS` plants
// those with WORDS in their name. The last line is `N faults, N caught`.
register();
const { prove } = await import('./prove.ts');
process.exit((await prove(process.argv[2])) ? 0 : 1);
