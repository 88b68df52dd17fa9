import { formatDay, formatNumber, limitWords } from '@quartermark/engine/display';
import type { ItemInput, Limit } from '@quartermark/engine/log';
import { USE_CLASSES } from '@quartermark/engine/log';
import type { VersionLine } from '../forms/version-rows.ts';
import { INCIDENT_NAME, ROLE_WORDS, USE_NAME } from './use-words.ts';

function weighted(limit: Limit): string {
  const weights = 'weights' in limit ? (limit.weights ?? {}) : {};
  const parts = USE_CLASSES.flatMap((use) => {
    const weight = weights[use];
    return weight === undefined
      ? []
      : [`${USE_NAME[use].toLowerCase()} × ${formatNumber(weight, 3)}`];
  });
  return parts.length === 0 ? limitWords(limit) : `${limitWords(limit)} (${parts.join(', ')})`;
}

function hardUse({ severe }: ItemInput): string {
  if (!severe) return 'no schedule of its own';
  const classes = severe.classes.map((use) => USE_NAME[use].toLowerCase()).join(', ');
  const of = severe.basis === 'limit' ? 'the usual limit' : 'all use';
  const measure = severe.measure === 'km' ? 'distance' : severe.measure;
  return `${classes}, from ${formatNumber(severe.share * 100, 2)} % of ${of} in ${measure}: ${severe.limits.map(weighted).join(', ')}`;
}

function lastDone({ baseline }: ItemInput): string {
  if (!baseline) return 'not on record';
  const { on, time, odometer, historyComplete } = baseline;
  return [
    `${formatDay(on)}${time ? `, ${time}` : ''}`,
    odometer ? `at ${odometer.text} ${odometer.unit} on the odometer` : '',
    historyComplete ? 'all use since then is in the log' : '',
  ]
    .filter((part) => part !== '')
    .join(', ');
}

function atOnce({ triggers }: ItemInput): string {
  const parts = [
    ...(triggers?.incidents ?? []).map((sort) => INCIDENT_NAME[sort].toLowerCase()),
    triggers?.oilHotterThanC === undefined ? '' : `oil hotter than ${triggers.oilHotterThanC} °C`,
    triggers?.wheelsOff ? 'wheels off and not on record as torqued' : '',
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'nothing' : parts.join(', ');
}

/** An item in words, a line for each thing a form can change. */
export function itemLines(item: ItemInput): VersionLine[] {
  return [
    { label: 'Name', words: item.name },
    { label: 'What it is', words: ROLE_WORDS[item.role] },
    { label: 'Limits', words: item.limits.map(weighted).join(', ') },
    { label: 'Hard use', words: hardUse(item) },
    { label: 'Last done', words: lastDone(item) },
    { label: 'Done once', words: item.once ? 'yes, then it is over' : 'no, it comes again' },
    { label: 'Due since', words: item.dueSince ? formatDay(item.dueSince) : 'not said' },
    { label: 'Due at once after', words: atOnce(item) },
    { label: 'Tell me before', words: `${item.warnDays} days` },
    { label: 'Days to get the parts', words: String(item.leadDays) },
    { label: 'Whose values', words: item.source ?? 'unverified' },
  ];
}
