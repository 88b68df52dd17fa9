import { byTheCalendar } from './by-the-calendar.ts';
import { everyday } from './everyday.ts';
import { hardUse } from './hard-use.ts';
import type { Situation } from './situation.ts';

export { bookOf, type Situation } from './situation.ts';
export const situations: readonly Situation[] = [...everyday, ...hardUse, ...byTheCalendar];
