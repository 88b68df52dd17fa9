/**
 * The notice of a car's oil ledger, as an `answer` names it: its kind, the car and the entry at which it arose.
 * It stays the same until that entry is removed or another one takes its place.
 *
 * @param kind of an `OilNotice`
 * @example oilNotice('useRisen', 'c', 'e') // "oil:useRisen:c:e"
 */
export function oilNotice(kind: string, car: string, entry: string): string {
  return `oil:${kind}:${car}:${entry}`;
}

/** What a person can say of rising use; each is the text of an `answer`. The first keeps it watched. */
export const RISE_ANSWERS = {
  really: 'It really uses more',
  missing: 'A session or a top-up was missing',
  nothing: 'Looked into it: nothing to do',
} as const;

/** What a person can say of more oil than there can be. */
export const EXPLAINED_ANSWERS = {
  topUp: 'A top-up was not logged',
  fuel: 'Fuel or coolant was in it',
  misread: 'Read wrong',
} as const;
