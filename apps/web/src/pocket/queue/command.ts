import type { Refusal, RefusalCode } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';

/** A number, or null: whatever the command before it on the same entry will have made. */
export type BaseRevision = number | null;

/** Questions of the server that were answered with "as I wrote it". */
export type Confirmed = readonly RefusalCode[];

/** What is asked of the server. `entry` of a removal is kept for words only and not sent. */
export type Ask =
  | { verb: 'entry.record'; input: { entry: EntryInput; confirmed: Confirmed } }
  | {
      verb: 'entry.amend';
      input: { entry: EntryInput; baseRevision: BaseRevision; confirmed: Confirmed };
    }
  | { verb: 'entry.remove'; input: { entry: EntryInput; baseRevision: BaseRevision } };

/**
 * The life of a command: `waiting` until it is its turn, `sending` while the server is asked, then gone;
 * or `refused` or `conflict`, where it stays until the person has decided. One that is found `sending`
 * by a page that has just begun was cut off: it is sent again under the same id, and the server answers
 * the same command once only.
 */
export type CommandState = 'waiting' | 'sending' | 'refused' | 'conflict';

/** Why a command stays: what the server refused, or that it failed at it again and again. */
export type WhyStuck = Omit<Refusal, 'code'> & { code: RefusalCode | 'serverFailed' };

export type Command = Ask & {
  /** place in the line, given by the store: the order of making */
  order: number;
  /** changes when what is asked changes */
  commandId: string;
  garageId: string;
  entryId: string;
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

/** A photo that waits for its entry, as it was taken. */
export type WaitingPhoto = {
  photoId: string;
  garageId: string;
  entryId: string;
  blob: Blob;
  /** true once the server holds it */
  sent: boolean;
};

export type NewCommand = Ask &
  Pick<Command, 'commandId' | 'garageId' | 'madeAt'> & {
    /** true: the server was asked for it already, and no answer came */
    mayBeDone?: boolean;
  };
export type NewPhoto = Pick<WaitingPhoto, 'photoId' | 'blob'>;

/** Whether a command stays in the list until a person decides. */
export const isStuck = ({ state }: Command): boolean => state === 'refused' || state === 'conflict';
