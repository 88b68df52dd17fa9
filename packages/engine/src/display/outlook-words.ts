import type { Outlook, RunsOut } from '../what-if/outlook.ts';
import { dayAhead, type Spoken, weekdayAhead } from './due-words.ts';
import { listWords } from './grammar.ts';
import type { ItemMark } from './item-words.ts';
import { partsWords } from './order-words.ts';

/** Names told one by one; what goes beyond is counted. */
const NAMED = 6;

const BEGINS: Readonly<Record<RunsOut['how'], string>> = {
  already: 'Has run out already',
  likely: 'Likely to run out before the end',
  could: 'Could run out before the end',
};

/**
 * What an event means for a car, a sentence for each: what has run out, what is likely to and what could,
 * each with its work; that nothing known does; and of what nobody can say.
 *
 * @example outlookSentences(outlook, { asOf: '2026-06-01' })
 * // ["Likely to run out before the end: Brake fluid (latest work Fri 12 June, order the parts by 5 June, they take 7 days)."]
 */
export function outlookSentences(outlook: Outlook, spoken: Spoken): string[] {
  const { runsOut, notKnown } = outlook;
  const sentences = (['already', 'likely', 'could'] as const).flatMap((how) => {
    const those = runsOut.filter((one) => one.how === how).map((one) => withWork(one, spoken));
    return those.length === 0 ? [] : [`${BEGINS[how]}: ${listWords(those, NAMED)}.`];
  });
  const unknown = [
    ...namedSentence('Not on record', notKnown, (code) => code !== 'lowerBound'),
    ...namedSentence('History incomplete', notKnown, (code) => code === 'lowerBound'),
  ];
  const overOnly = runsOut.length > 0 && runsOut.every(({ how }) => how === 'already');
  const others = overOnly && outlook.lasts > 0 ? ['Nothing else known does.'] : [];
  if (sentences.length > 0) return [...sentences, ...others, ...unknown];
  if (outlook.lasts === 0) return unknown.length > 0 ? unknown : ['Nothing is watched on it.'];
  return ['Nothing known runs out before the end.', ...unknown];
}

/** The mark that goes with what an event means for a car: the worst of it. */
export function outlookMark({ runsOut, notKnown, lasts }: Outlook): ItemMark {
  if (runsOut.some(({ how }) => how === 'already')) return 'overdue';
  if (runsOut.length > 0) return 'dueSoon';
  return notKnown.length > 0 || lasts === 0 ? 'notOnRecord' : 'inLimits';
}

function namedSentence(
  words: string,
  notKnown: Outlook['notKnown'],
  is: (code: Outlook['notKnown'][number]['reasonCode']) => boolean,
): string[] {
  const names = notKnown.filter(({ reasonCode }) => is(reasonCode)).map(({ name }) => name);
  return names.length === 0 ? [] : [`${words}: ${listWords(names, NAMED)}.`];
}

function withWork(one: RunsOut, spoken: Spoken): string {
  const work = workWords(one, spoken);
  return work === '' ? one.name : `${one.name} (${work})`;
}

/**
 * When the work is to be done so that it lasts through the event, and its parts.
 *
 * @example workWords(runsOut, { asOf: '2026-06-01' }) // "latest work Fri 12 June"
 */
export function workWords(one: RunsOut, spoken: Spoken): string {
  const { latestWork, notBefore, tooShort } = one;
  const words = [
    latestWork === null ? '' : `latest work ${orToday(latestWork, spoken)}`,
    notBefore === null
      ? ''
      : `done before ${dayAhead(notBefore, spoken)} it would run out again before the end`,
    tooShort ? 'even work on the day before would not last to the end' : '',
    ordersWords(one, spoken),
  ];
  return words.filter((part) => part !== '').join(', ');
}

function orToday(day: string, spoken: Spoken): string {
  return day === spoken.asOf ? 'today' : weekdayAhead(day, spoken);
}

/** An order may come in time for the likely day and still be too late for the event. */
function ordersWords({ parts, latestWork, leadDays }: RunsOut, spoken: Spoken): string {
  if (parts === null) return '';
  if (parts.kind !== 'ordered') return partsWords(parts, { leadDays }, spoken) ?? '';
  const { expected } = parts.order;
  const late = latestWork !== null && expected !== undefined && expected > latestWork;
  const words = partsWords({ ...parts, late: false }, { leadDays }, spoken) ?? '';
  return late ? `${words}, too late for it` : words;
}
