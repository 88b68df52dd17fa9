import { randomUUID } from 'node:crypto';
import { test as base, type Page } from '@playwright/test';
import type { CarView, EntryView, GearView, HistoryPage, Written } from '@quartermark/api/client';
import type { EntryDraft, GearDraft, ItemDraft } from '@quartermark/engine/log';
import { eventually } from '../eventually.ts';
import type { Answer, HttpApi } from '../http-api.ts';
import { apiOf } from './api-of.ts';

/** The day on which every journey takes place; the test build's clock stands on it. */
export const TODAY = '2026-06-15';

type Without<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;
export type Happened = Without<EntryDraft, 'id' | 'zone' | 'car' | 'on'> & {
  id?: string;
  on?: string;
};

/** A garage of a test's own with one car, so that journeys side by side do not meet. */
export class OwnGarage {
  constructor(
    readonly api: HttpApi,
    readonly garageId: string,
    readonly carId: string,
    readonly name: string,
  ) {}

  readonly home = (): string => `/g/${this.garageId}`;
  readonly car = (): string => `${this.home()}/car/${this.carId}`;
  readonly record = (kind = ''): string =>
    `${this.home()}/record/${this.carId}${kind ? `/${kind}` : ''}`;

  entry(happened: Happened): EntryDraft {
    return {
      id: randomUUID(),
      on: TODAY,
      zone: 'Europe/London',
      car: this.carId,
      ...happened,
    } as EntryDraft;
  }

  /** Records through the api what is not the subject of the journey. */
  write(happened: Happened): Promise<Written> {
    return this.api.mutate<Written>('entry.record', this.command({ entry: this.entry(happened) }));
  }

  attempt(happened: object): Promise<Answer<Written>> {
    const entry = { ...this.entry({ kind: 'note', note: '' }), note: undefined, ...happened };
    return this.api.attempt<Written>('entry.record', this.command({ entry }));
  }

  async watch(item: ItemDraft): Promise<string> {
    const itemId = randomUUID();
    await this.api.mutate('item.add', this.command({ carId: this.carId, itemId, item }));
    return itemId;
  }

  /** Another car in the same garage. */
  async another(name: string): Promise<OwnGarage> {
    const carId = randomUUID();
    const car = { name, unit: 'km', profile: {} };
    await this.api.mutate('car.add', this.command({ carId, car }));
    return new OwnGarage(this.api, this.garageId, carId, name);
  }

  /** A set, a tool or a person, with what is watched of it. */
  async keep(gear: GearDraft, items: readonly ItemDraft[] = []): Promise<string> {
    const gearId = randomUUID();
    const watched = items.map((item) => ({ itemId: randomUUID(), item }));
    await this.api.mutate('gear.add', this.command({ gearId, gear, items: watched }));
    return gearId;
  }

  piece(gearId: string): Promise<GearView> {
    return this.api.query<GearView>('gear.view', { garageId: this.garageId, gearId });
  }

  command<T extends object>(input: T): T & { garageId: string; commandId: string } {
    return { garageId: this.garageId, commandId: randomUUID(), ...input };
  }

  view(): Promise<CarView> {
    const { garageId, carId } = this;
    return this.api.query<CarView>('car.view', { garageId, carId });
  }

  /** The newest first. */
  async log(more: { removed?: boolean } = {}): Promise<EntryView[]> {
    const { garageId, carId } = this;
    const input = { garageId, carId, ...more };
    return (await this.api.query<HistoryPage>('entry.history', input)).entries;
  }

  /** The log once it holds that many entries. */
  logOf(count: number): Promise<EntryView[]> {
    return eventually(`${count} entries`, async () => {
      const found = await this.log();
      return found.length === count && found;
    });
  }

  /** The car once everything that was written is counted. */
  counted(): Promise<CarView> {
    return eventually('the car to be computed', async () => {
      const view = await this.view();
      return view.version === view.wantedVersion && view;
    });
  }
}

/** Brake fluid counted in sessions, engine oil in kilometres, done on the first of May. */
export const BRAKE_FLUID: ItemDraft = {
  name: 'Brake fluid',
  limits: [{ measure: 'sessions', value: 18 }],
  baseline: { on: '2026-05-01', historyComplete: true },
};
export const ENGINE_OIL: ItemDraft = {
  name: 'Engine oil',
  role: 'engineOil',
  limits: [{ measure: 'km', value: 10_000, unit: 'km' }],
  baseline: {
    on: '2026-05-01',
    odometer: { text: '41000', unit: 'km' },
    historyComplete: true,
  },
};

async function makeGarage(page: Page, origin: string, name: string): Promise<OwnGarage> {
  const api = apiOf(page.request, origin);
  const { id } = await api.mutate<Written>('garage.create', {
    garageId: randomUUID(),
    commandId: randomUUID(),
    name: 'The Low Barn',
    zone: 'Europe/London',
    hemisphere: 'N',
    distanceUnit: 'km',
    volumeUnit: 'l',
  });
  const carId = randomUUID();
  const car = { name, unit: 'km', profile: { oilSpanL: 1.2, sump: 'wet' } };
  await api.mutate('car.add', { garageId: id, commandId: randomUUID(), carId, car });
  return new OwnGarage(api, id, carId, name);
}

/**
 * Journeys of the owner; `garage` is new for each. A page is looked at once it is alive: a hand is slower
 * than a page that comes alive, a test is not.
 */
export const test = base.extend<{ garage: OwnGarage }>({
  page: async ({ page }, use) => {
    const alive = () => page.locator('html[data-alive]').waitFor({ state: 'attached' });
    const goTo = page.goto.bind(page);
    const reload = page.reload.bind(page);
    page.goto = async (...asked) => {
      const answer = await goTo(...asked);
      await alive();
      return answer;
    };
    page.reload = async (...asked) => {
      const answer = await reload(...asked);
      await alive();
      return answer;
    };
    await use(page);
  },
  garage: async ({ page, baseURL }, use) => {
    await use(await makeGarage(page, baseURL ?? '', 'Tarnfell Corvo'));
  },
});
