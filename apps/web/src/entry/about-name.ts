import type { AboutWhat } from '../record/about-what.ts';
import { ask, pageCache } from '../server/ask.ts';

/**
 * The name of what an entry is about; its page then has the answer that its screen asks for.
 *
 * @throws what the api refused, if it is not there
 */
export async function aboutName(garageId: string, what: AboutWhat): Promise<string> {
  if (what === null) {
    const garages = await pageCache().fetchQuery(ask().garage.mine.queryOptions());
    return garages.find(({ id }) => id === garageId)?.name ?? '';
  }
  if ('carId' in what) {
    const { carId } = what;
    const view = await pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId }));
    return view.car.name;
  }
  const { gearId } = what;
  const view = await pageCache().fetchQuery(ask().gear.view.queryOptions({ garageId, gearId }));
  return view.row.gear.name;
}
