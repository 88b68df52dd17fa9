import type { UseClass } from '../log/item.ts';

/** Where each class of use takes place, to go on in a sentence. */
export const USE_PLACE: Readonly<Record<UseClass, string>> = {
  road: 'on the road',
  touring: 'on road trips',
  circuit: 'on circuits',
  strip: 'on the drag strip',
  autocross: 'at autocross',
};
