import type { Analysis } from '../src/wear/result.ts';

/** The part of an analysis that says nothing stands in the way. */
export const nothingOpen: Pick<Analysis, 'status' | 'matters'> = {
  status: 'inUse',
  matters: {
    findings: [],
    incidents: [],
    wheels: {
      state: 'notOnRecord',
      corners: [],
      entry: null,
      on: null,
      sinceKm: null,
      sinceSessions: null,
    },
    wakeSteps: [],
  },
};
