import type { NeedKind } from '../log/requirements.ts';
import type { SaidIn } from '../readiness/asked.ts';
import type { CarReadiness, Need } from '../readiness/result.ts';
import type { Analysis } from '../wear/result.ts';
import { formatDay } from './format-day.ts';
import { formatDistance } from './format-quantity.ts';
import { countWord, listWords } from './grammar.ts';
import { levelWords } from './level-words.ts';
import { levelBandWords, levelFractions } from './likely-level-words.ts';
import { findingWords } from './matter-words.ts';
import { marginWords } from './need-words.ts';
import type { ReadyMark } from './verdict-words.ts';

/** What somebody asks who is about to go out again, and in which order it is told. */
const ASKED: readonly NeedKind[] = [
  'doNotDrive',
  'incident',
  'wheels',
  'oilLevel',
  'openJob',
  'finding',
  'pads',
  'tyres',
  'torque',
  'bedding',
  'limit',
  'oilLook',
];
const place = ({ kind }: Need) => ASKED.indexOf(kind);

/** Of the limits only those without which no car is ready for the road: oil, brake fluid and the like. */
const isAsked = (need: Need) =>
  place(need) >= 0 && (need.kind !== 'limit' || need.weight === 'blocking');

/** Told one by one; what goes beyond is counted. */
const NAMED = 2;

/**
 * Whether anything on record is in the way of going out again: what is, the worst first, else what is known of
 * oil, wear and wheels; and what is not on record. It says what the log says, never that a car is safe.
 *
 * @param road the readiness of the same car for the road, today
 * @example goOutAgain(road, analysis, { distance: 'km', volume: 'l' }).words
 * // "Nothing on record is in the way: oil between half and MAX by the ledger, wheels torqued 12 km ago. Not on record: Front pads."
 */
export function goOutAgain(
  road: CarReadiness,
  analysis: Analysis,
  saidIn: SaidIn,
): { mark: ReadyMark; words: string } {
  const asked = road.needs.filter(isAsked).sort((a, b) => place(a) - place(b));
  const open = asked.filter(({ status }) => status === 'notMet' || status === 'metAfterWork');
  const hard = hardUse(analysis);
  const unknown = notOnRecord(asked);
  if (open.length > 0) {
    const stands = open.some(({ weight }) => weight === 'blocking');
    const start = stands ? 'In the way' : 'See to it first';
    const words = [`${start}: ${tell(open)}`, ...hard, ...unknown].join(' ');
    return {
      mark: open.some(({ status }) => status === 'notMet') ? 'notReady' : 'afterWork',
      words,
    };
  }
  const known = asked.filter(({ status }) => status === 'met');
  const facts = [
    ...oilFact(known, analysis),
    ...known.flatMap((need) => wearFact(need, saidIn)),
    ...wheelsFact(analysis, saidIn),
  ];
  const start = 'Nothing on record is in the way';
  const first = facts.length === 0 ? `${start}.` : `${start}: ${facts.join(', ')}.`;
  const mark = hard.length > 0 ? 'afterWork' : unknown.length > 0 ? 'readyUnknown' : 'ready';
  return { mark, words: [first, ...hard, ...unknown].join(' ') };
}

function tell(open: readonly Need[]): string {
  const shown = open.length > NAMED + 1 ? open.slice(0, NAMED) : open;
  const rest = open.slice(shown.length).map(({ title }) => title);
  const more =
    rest.length === 0 ? [] : [`And ${countWord(rest.length).toLowerCase()} more: ${list(rest)}.`];
  return [...shown.map(sentence), ...more].join(' ');
}

/** Reasons of these do not say what they are about. */
const TITLE_FIRST: readonly NeedKind[] = ['pads', 'tyres', 'limit', 'oilLook'];

function sentence({ kind, title, reason }: Need): string {
  if (kind === 'doNotDrive') return `do not drive, ${reason}`;
  if (!TITLE_FIRST.includes(kind) || reason.includes(title)) return reason;
  return `${title}, ${reason.charAt(0).toLowerCase()}${reason.slice(1)}`;
}

/** Findings for before hard use keep no car off the road, and are told to whoever goes out again. */
function hardUse({ matters }: Analysis): string[] {
  const findings = matters.findings.filter(({ severity }) => severity === 'beforeHardUse');
  return findings.length === 0
    ? []
    : [`Before hard use: ${listWords(findings.map(findingWords), NAMED)}.`];
}

function notOnRecord(asked: readonly Need[]): string[] {
  const titles = asked.filter(({ status }) => status === 'unknown').map(({ title }) => title);
  return titles.length === 0 ? [] : [`Not on record: ${list([...new Set(titles)])}.`];
}

/** Titles hold commas of their own. */
function list(titles: readonly string[]): string {
  const shown = titles.length > 4 ? titles.slice(0, 3) : titles;
  const rest = titles.length - shown.length;
  return [...shown, ...(rest > 0 ? [`${rest} more`] : [])].join('; ');
}

function oilFact(known: readonly Need[], { oil, lastLevel }: Analysis): string[] {
  if (!known.some(({ kind }) => kind === 'oilLevel')) return [];
  if (oil.status !== 'none') {
    const { low, high } = levelFractions(oil);
    return [`oil ${levelBandWords(low, high)} by the ledger`];
  }
  return lastLevel === null
    ? []
    : [`oil ${levelWords(lastLevel)} when read on ${formatDay(lastLevel.on)}`];
}

function wearFact({ kind, title, margin }: Need, saidIn: SaidIn): string[] {
  if ((kind !== 'pads' && kind !== 'tyres') || margin === null) return [];
  return [`${title} ${marginWords(margin, saidIn)}`];
}

function wheelsFact({ matters: { wheels } }: Analysis, { distance }: SaidIn): string[] {
  const { state, on, sinceKm } = wheels;
  if (on === null || (state !== 'torqued' && state !== 'rechecked')) return [];
  const done = state === 'torqued' ? 'wheels torqued' : 'wheel torque checked again';
  return [
    sinceKm === null
      ? `${done} on ${formatDay(on)}`
      : `${done} ${formatDistance(sinceKm, distance)} ago`,
  ];
}
