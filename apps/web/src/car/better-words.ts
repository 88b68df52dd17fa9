import { type ItemResult, isAmountLimit } from '@quartermark/engine';

/** What a person can do so that an item's figures rest on more. Empty where nothing is missing. */
export function betterWords({ reasonCode, limits, state, dueDate }: ItemResult): string[] {
  const amounts = limits.filter(isAmountLimit);
  const words: string[] = [];
  if (reasonCode === 'noBaseline')
    words.push('Say when it was last done, and at which odometer reading if you know it.');
  if (amounts.some((limit) => !limit.known))
    words.push(
      'Record what is missing since the last service, or give its odometer reading. If all use since then is in the log, say so at the item.',
    );
  if (amounts.some((limit) => limit.estimated > 0))
    words.push(
      'Record distances, hours or sessions where you know them; what you give is believed.',
    );
  if (state === null && amounts.length > 0)
    words.push('Read the odometer now and then: what is left is true as of the last reading.');
  if (dueDate !== undefined && (state === 'fine' || state === 'dueSoon') && amounts.length > 0)
    words.push(
      amounts.some(({ measure }) => measure === 'km' || measure === 'hours')
        ? 'Read the odometer now and then, and plan events with what the car does there: the days rest on both.'
        : 'Plan events with what the car does there: the days rest on that and on what was recorded.',
    );
  return words;
}
