import type { Proposal } from '@quartermark/engine/library';
import type { ItemDraft } from '@quartermark/engine/log';
import { type Problems, readField } from '../items/limit-fields.ts';
import { answeredItem } from './answer.ts';
import type { BeginFields } from './begin-fields.ts';

export type Answered = { key: string; item: ItemDraft };

/**
 * What the interview adds, in the order of the proposals, or what is wrong with its answers: by
 * `KEY.field`, and `odometer` for today's reading.
 */
export function readBegin(
  fields: BeginFields,
  proposals: readonly Proposal[],
  { today, unit }: { today: string; unit: 'km' | 'mi' },
): { items: Answered[] } | { problems: Problems } {
  const problems: Problems = {};
  if (fields.odometer.trim() !== '') readField(fields.odometer, 'odometer', problems, true);
  const now = { on: today, odometer: fields.odometer, unit };
  const items = proposals.flatMap((proposal) => {
    const item = answeredItem(proposal, fields.answers[proposal.key], now, problems);
    return item === null ? [] : [{ key: proposal.key, item }];
  });
  return Object.keys(problems).length > 0 ? { problems } : { items };
}

const FIELD: readonly [RegExp, string][] = [
  [/baseline\.odometer/, 'odometer'],
  [/baseline/, 'on'],
  [/limits\.1/, 'months'],
  [/limits/, 'distance'],
];

/**
 * Where the server's words belong: it names items by their place in what was sent. What belongs to no
 * answer is left out and stands at the button alone.
 *
 * @example placed({ 'items.0.item.baseline.on': 'Too early' }, ['oil']) // { 'oil.on': 'Too early' }
 */
export function placed(fields: Problems, keys: readonly string[]): Problems {
  const found: Problems = {};
  for (const [path, message] of Object.entries(fields)) {
    const [, at, rest = ''] = /^items\.(\d+)\.(.*)$/.exec(path) ?? [];
    const key = at === undefined ? undefined : keys[Number(at)];
    const field = FIELD.find(([pattern]) => pattern.test(rest))?.[1];
    if (key !== undefined && field !== undefined) found[`${key}.${field}`] ??= message;
  }
  return found;
}
