import { daysBetween } from '@quartermark/engine/calendar';
import {
  causeWords,
  dayAhead,
  laneItemWords,
  OIL_NOTICE_WORDS,
  partsWords,
  readyWords,
  spokenDay,
  weekdayAhead,
} from '@quartermark/engine/display';
import type { Fact, FactKind, FactOf } from '../facts/fact.ts';
import type { LetterMark } from './letter.ts';
import { NAME_MOST, plain, SENTENCE_MOST } from './plain.ts';
import type { Said, Why } from './to-tell.ts';

/** A fact in words; `name` is of the item, so that those that say the same make one line. */
export type Worded = {
  mark: LetterMark;
  word: string;
  /** before the colon: the car, and the event it goes to */
  about: string;
  name: string | null;
  /** after the names; may be empty */
  tail: string;
  /** at the very end, in brackets; absent: nothing */
  note?: string;
  /** the state in a few words, at the end of a subject */
  brief: string;
};

export type Told<F extends Fact = Fact> = { fact: F; why: Why; said: Said | undefined };

const typed = (name: string) => plain(name, NAME_MOST);
const day = (date: string, asOf: string) => dayAhead(date, { asOf });

const WORDS: { [K in FactKind]: (told: Told<FactOf<K>>, today: string) => Worded } = {
  urgent: ({ fact: { carName, urgent } }) => {
    const tail = plain(urgent.what, SENTENCE_MOST);
    const word = 'Before anything else';
    return { mark: 'stop', word, about: typed(carName), name: null, tail, brief: tail };
  },
  notWorkedOut: ({ fact: { carName, since } }, today) => ({
    mark: 'unknown',
    word: 'Not worked out',
    about: typed(carName),
    name: null,
    tail: `not since ${day(since, today)}, so what has come since is not known`,
    brief: 'not worked out',
  }),
  verdict: ({ fact, why, said }, today) => {
    const { carName, event, verdict, open } = fact;
    const { word, mark } = readyWords(verdict, { asOf: today });
    const when = spokenDay(later(event.start, today), { asOf: today });
    const was = why === 'again' || said?.state === fact.state ? undefined : WAS[said?.state ?? ''];
    return {
      mark: OF_READY[mark],
      word,
      about: `${typed(carName)} for ${typed(event.name)} ${whenWords(when)}`,
      name: null,
      tail: titles(open),
      ...(was !== undefined && { note: `before: ${was}` }),
      brief: word.charAt(0).toLowerCase() + word.slice(1),
    };
  },
  overdue: ({ fact: { carName, line, since }, why }, today) => {
    const age = since === null ? 0 : daysBetween(since, today);
    const from = since === null ? '' : `since ${day(since, today)}`;
    const old = why === 'again' && age > 0 ? `, ${age === 1 ? '1 day' : `${age} days`}` : '';
    const still = why === 'again';
    return {
      mark: 'overdue',
      word: still ? 'Still overdue' : 'Overdue',
      about: typed(carName),
      name: typed(line.name),
      tail: [atOnce(line), `${from}${old}`, partsOf(line, today)]
        .filter((part) => part !== '')
        .join('; '),
      brief: still ? 'still overdue' : 'overdue',
    };
  },
  dueSoon: ({ fact: { carName, line, unit }, why }, today) => {
    const { detail } = laneItemWords(line, { unit, laidUp: false, asOf: today });
    return {
      mark: 'soon',
      word: why === 'again' ? 'Still due soon' : 'Due soon',
      about: typed(carName),
      name: typed(line.name),
      tail: [detail, partsOf(line, today)].filter((part) => part !== '').join('; '),
      brief: 'due soon',
    };
  },
  oilNotice: ({ fact: { carName, what, since }, why }, today) => {
    const brief = OIL_NOTICE_WORDS[what].charAt(0).toLowerCase() + OIL_NOTICE_WORDS[what].slice(1);
    const word = why === 'again' ? `Still: ${brief}` : OIL_NOTICE_WORDS[what];
    const tail = `since ${day(since, today)}`;
    return { mark: 'overdue', word, about: typed(carName), name: null, tail, brief };
  },
  missedLook: ({ fact: { carName, looked }, why }, today) => ({
    mark: looked === null ? 'unknown' : 'soon',
    word: why === 'again' ? 'Oil still not looked at' : 'Oil not looked at',
    about: typed(carName),
    name: null,
    tail:
      looked === null
        ? 'no look at the oil is on record'
        : `not since ${day(looked.on, today)}; a look was due by ${weekdayAhead(looked.due, { asOf: today })}`,
    brief: 'look at the oil',
  }),
};

/** A fact in the words of a letter. What people typed comes as plain text, in one line. */
export function wordsOf(told: Told, today: string): Worded {
  const words = WORDS[told.fact.kind] as (told: Told, today: string) => Worded;
  const said = words(told, today);
  const { quiet } = told.fact;
  if (told.why !== 'putOffOver' || quiet?.because !== 'putOff') return said;
  return { ...said, note: `put off until ${weekdayAhead(quiet.until, { asOf: today })}` };
}

const later = (a: string, b: string) => (a > b ? a : b);

const WAS: Readonly<Record<string, string>> = {
  ready: 'ready',
  canBeReady: 'could be ready',
  notInTime: 'not in time',
  notOnRecord: 'not on record',
};

const OF_READY = {
  ready: 'good',
  afterWork: 'soon',
  notReady: 'overdue',
  readyUnknown: 'unknown',
} as const;

const whenWords = (when: string) => (when === 'today' || when === 'tomorrow' ? when : `on ${when}`);

/** Titles hold commas of their own. */
function titles(open: readonly string[]): string {
  const shown = open.length > 3 ? open.slice(0, 2) : open;
  const rest = open.length - shown.length;
  return [...shown.map(typed), ...(rest > 0 ? [`${rest} more`] : [])].join('; ');
}

type Line = FactOf<'overdue'>['line'];

function atOnce({ reasonCode, cause }: Line): string {
  if (reasonCode === 'asked') return 'to be treated as due now';
  return reasonCode === 'trigger' && cause ? causeWords(cause) : '';
}

const partsOf = ({ parts, leadDays }: Line, today: string) =>
  (parts && partsWords(parts, { leadDays }, { asOf: today })) ?? '';
