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

/**
 * What a person can say of a notice; each is the text of an `answer`. What is missing from the log is recorded
 * instead, and what was found in the oil is a finding.
 */
export const OIL_ANSWERS = {
  /** keeps it watched until use is as it was */
  really: 'It really uses more',
  misread: 'It was read wrong',
  nothing: 'Looked into it: nothing to do',
} as const;
