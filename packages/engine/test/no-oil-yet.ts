import { answerOil, type CarOil, foldLedger, USUAL_PRIORS } from '../src/oil/index.ts';

/** What the ledger says of a car of which nothing about its oil is on record. */
export function noOilYet(): CarOil {
  const { state } = foldLedger(1, USUAL_PRIORS, []);
  const logged = { circuit: false, strip: false };
  return {
    ...answerOil(state, null, logged),
    levelsRead: 0,
    lastLook: null,
    readLow: null,
    readOver: false,
    nextLook: { km: null, atOdometerKm: null, by: null },
    risenSince: null,
    notices: [],
    spanL: 1,
    spanAssumed: true,
  };
}
