import type { LiveEvent } from '../views.ts';

export type LiveHub = {
  /** events of one garage from now on, until the signal or the hub ends */
  listen(garageId: string, signal: AbortSignal): AsyncIterable<LiveEvent>;
  close(): Promise<void>;
};
