import type { Refusal, RefusalCode } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';

/** A number, or null: whatever the command before it on the same entry will have made. */
export type BaseRevision = number | null;

/** Questions of the server that were answered with "as I wrote it". */
export type Confirmed = readonly RefusalCode[];

/** What is asked of the server about an entry. `entry` of a removal is kept for words only and not sent. */
export type EntryAsk =
  | { verb: 'entry.record'; input: { entry: EntryInput; confirmed: Confirmed } }
  | {
      verb: 'entry.amend';
      input: { entry: EntryInput; baseRevision: BaseRevision; confirmed: Confirmed };
    }
  | { verb: 'entry.remove'; input: { entry: EntryInput; baseRevision: BaseRevision } };

/** A line of an event's work that somebody ticked, or took the tick off again. */
export type TickMade = {
  /** its own id: sent again, it is the same tick */
  tickId: string;
  eventId: string;
  carId: string | null;
  /** id of the line of work */
  line: string;
  done: boolean;
  /** instant by the garage's clock, ISO: of two ticks on a line the later one decides */
  madeAt: string;
};

/** `words` say what was ticked, for this phone alone: they are not sent. */
export type TickAsk = { verb: 'event.tick'; input: { tick: TickMade; words: string } };

/** What is asked of the server. */
export type Ask = EntryAsk | TickAsk;

/**
 * The life of a command: `waiting` until it is its turn, `sending` while the server is asked, then gone;
 * or `refused` or `conflict`, where it stays until the person has decided. One that is found `sending`
 * by a page that has just begun was cut off: it is sent again under the same id, and the server answers
 * the same command once only.
 */
export type CommandState = 'waiting' | 'sending' | 'refused' | 'conflict';

/** Why a command stays: what the server refused, or that it failed at it again and again. */
export type WhyStuck = Omit<Refusal, 'code'> & { code: RefusalCode | 'serverFailed' };

type InLine = {
  /** place in the line, given by the store: the order of making */
  order: number;
  /** changes when what is asked changes */
  commandId: string;
  garageId: string;
  /** instant by this phone's clock, ISO: only tells whether it waited; the entry has the garage's day */
  madeAt: string;
  state: CommandState;
  /** how often the server was asked for it */
  tries: number;
  /** true: it was asked for and no answer came, so it may be done already */
  mayBeDone: boolean;
  /** true: it could not be sent when it was made, so nobody is there to be asked */
  waited: boolean;
  /** why it stays; null while it may still go */
  refusal: WhyStuck | null;
};

export type EntryCommand = EntryAsk & InLine & { entryId: string };
export type TickCommand = TickAsk & InLine;
export type Command = EntryCommand | TickCommand;

/** A photo that waits for its entry, as it was taken. */
export type WaitingPhoto = {
  photoId: string;
  garageId: string;
  entryId: string;
  blob: Blob;
  /** true once the server holds it */
  sent: boolean;
};

type New = Pick<InLine, 'commandId' | 'garageId' | 'madeAt'> & {
  /** true: the server was asked for it already, and no answer came */
  mayBeDone?: boolean;
};
export type NewEntryCommand = EntryAsk & New;
export type NewTickCommand = TickAsk & New;
export type NewCommand = NewEntryCommand | NewTickCommand;
export type NewPhoto = Pick<WaitingPhoto, 'photoId' | 'blob'>;

/** Whether a command stays in the list until a person decides. */
export const isStuck = ({ state }: Command): boolean => state === 'refused' || state === 'conflict';

export const isTick = <C extends { verb: Ask['verb'] }>(
  command: C,
): command is Extract<C, { verb: 'event.tick' }> => command.verb === 'event.tick';

/**
 * What a command is about: its entry, or its line of an event's work. Commands about the same thing keep
 * their order, and one that is stuck holds those behind it; others go on.
 */
export function concernOf(command: Command): string {
  if (!isTick(command)) return command.entryId;
  const { eventId, carId, line } = command.input.tick;
  return `tick:${eventId}:${carId ?? ''}:${line}`;
}
