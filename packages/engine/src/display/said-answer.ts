import type { SaidTally } from '../said/result.ts';
import { VERDICTS_LEAST } from '../said/tally-said.ts';
import { formatCount } from './format-quantity.ts';

/**
 * The first line of "We said, it was": how many of the dates that were said came true.
 *
 * @example saidAnswer(tally) // "Of 14 dates with an outcome 12 fell inside what was said."
 */
export function saidAnswer({ verdicts, inside }: SaidTally): string {
  if (verdicts === 0) return 'No date that was said has an outcome yet.';
  if (verdicts === 1)
    return `The one date with an outcome fell ${inside === 1 ? 'inside' : 'outside'} what was said.`;
  const fell = inside === verdicts ? 'all' : inside === 0 ? 'none' : String(inside);
  return `Of ${verdicts} dates with an outcome ${fell} fell inside what was said.`;
}

/**
 * What there is to say of that share: whether it is enough to tell, too few, or too narrow and by how much;
 * and what was left out of it.
 */
export function saidSentences(tally: SaidTally): string[] {
  const { earlier, later, byCalendar } = tally;
  const missed = [
    ...(earlier > 0 ? [`${earlier} came earlier`] : []),
    ...(later > 0 ? [`${later} later`] : []),
  ];
  const apart =
    byCalendar === 0
      ? []
      : [
          `${byCalendar === 1 ? 'One more was a day' : `${byCalendar} more were days`} of the calendar that came as ${byCalendar === 1 ? 'it' : 'they'} must, and ${byCalendar === 1 ? 'is' : 'are'} not counted.`,
        ];
  return [
    ...trust(tally),
    ...(missed.length === 0 ? [] : [`${missed.join(' and ')}.`]),
    ...apart,
    'An item counts once between two services, by what was said the longest before.',
  ];
}

function trust({ verdicts, tooNarrow }: SaidTally): string[] {
  if (verdicts === 0) return [];
  const meant = 'Eight in ten should fall inside.';
  if (verdicts < VERDICTS_LEAST)
    return [`${meant} Fewer than ten outcomes are too few yet to say whether they do.`];
  if (tooNarrow === null) return [meant];
  const more = `${tooNarrow.atLeast ? 'at least ' : ''}${formatCount(tooNarrow.days, 'day')}`;
  return [
    `${meant} What is said is too narrow: with ${more} more at either end eight in ten would have been inside. Plan with that much to spare.`,
  ];
}
