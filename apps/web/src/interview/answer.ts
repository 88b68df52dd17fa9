import type { Proposal } from '@quartermark/engine/library';
import type { ItemDraft, Limit } from '@quartermark/engine/log';
import { type Problems, readField } from '../items/limit-fields.ts';

export const STANDINGS = ['done', 'goodToday', 'dueNow', 'notHere'] as const;
/** What the person says of one proposal. */
export type Standing = (typeof STANDINGS)[number];

export type Answer = {
  standing: Standing;
  /** the day it was done, and the odometer then, as typed */
  on: string;
  odometer: string;
  /** the manual's value, where the library has none */
  distance: string;
  months: string;
  /** the date on a label, where that is the limit */
  label: string;
};

export function answered(standing: Standing): Answer {
  return { standing, on: '', odometer: '', distance: '', months: '', label: '' };
}

export type Today = {
  /** `YYYY-MM-DD` in the garage's zone */
  on: string;
  /** what the odometer shows today, as typed; '' where nobody looked */
  odometer: string;
  unit: 'km' | 'mi';
};

/** Whose value the limits are once the person took them from there. */
const ASKED_SOURCE = { manual: 'The maker’s manual', label: 'The label' } as const;

function askedLimits(
  { ask }: { ask: 'manual' | 'label' },
  answer: Answer,
  at: string,
  unit: 'km' | 'mi',
  problems: Problems,
): Limit[] {
  if (ask === 'label') {
    if (answer.label === '')
      problems[`${at}.label`] = 'Give the date the label says, or leave it open.';
    return [{ measure: 'date', value: answer.label }];
  }
  const limits: Limit[] = [];
  if (answer.distance.trim() !== '') {
    const value = readField(answer.distance, `${at}.distance`, problems, true);
    limits.push({ measure: 'km', value, unit });
  }
  if (answer.months.trim() !== '')
    limits.push({
      measure: 'months',
      value: readField(answer.months, `${at}.months`, problems, false),
    });
  if (limits.length === 0)
    problems[`${at}.distance`] =
      'Give what the manual says, a distance or months, or leave it open.';
  return limits;
}

function counted(answer: Answer, today: Today, at: string, problems: Problems): Partial<ItemDraft> {
  const reading = (text: string) =>
    text.trim() === '' ? {} : { odometer: { text, unit: today.unit } };
  switch (answer.standing) {
    case 'done':
      if (answer.on === '') problems[`${at}.on`] = 'Give the day it was done.';
      return { baseline: { on: answer.on, ...reading(answer.odometer) } };
    case 'goodToday':
      // from today on the log is kept, so nothing that counts is missing
      return { baseline: { on: today.on, ...reading(today.odometer), historyComplete: true } };
    case 'dueNow':
      return { dueSince: today.on };
    case 'notHere':
      return {};
  }
}

/**
 * The item that an answer makes of a proposal, or null where none is to be added.
 *
 * @param problems takes what is wrong with the answer, by `KEY.field`
 */
export function answeredItem(
  proposal: Proposal,
  answer: Answer | undefined,
  today: Today,
  problems: Problems,
): ItemDraft | null {
  if (!answer || answer.standing === 'notHere') return null;
  const { key } = proposal;
  const start = counted(answer, today, key, problems);
  if (!proposal.askManual) return { ...proposal.item, ...start };
  const limits = askedLimits(proposal, answer, key, today.unit, problems);
  return { source: ASKED_SOURCE[proposal.ask], ...proposal.item, limits, ...start };
}
