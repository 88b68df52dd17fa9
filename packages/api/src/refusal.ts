/**
 * A refusal: the person may not, or must say more. A closed list of codes; the message names the field,
 * the value and the mend. It travels as `error.data.refusal` of a tRPC error.
 */
export type RefusalCode =
  /** a field is missing or out of range */
  | 'badInput'
  /** no such thing, or not yours: a stranger cannot tell which */
  | 'notFound'
  /** you may look, but not change */
  | 'notAllowed'
  /** dated after tomorrow in the garage's zone */
  | 'afterTomorrow'
  /** the odometer is lower than the last one: ask once, then send `confirmed` */
  | 'odometerBackwards'
  /** a service and a use share the day without times: say which came first, or send `confirmed` */
  | 'orderUnclear'
  /** the same use is on record that day: leave it, or send `confirmed` to keep both */
  | 'looksTheSame'
  /** a component goes on while it is on another car: take it off there, or record it as moved */
  | 'alreadyFitted'
  /** the same command id with another payload */
  | 'commandReused'
  /** the revision the change rests on is no longer the newest; both are in `conflict` */
  | 'conflict'
  /** the entry was removed; it is not revived */
  | 'removed'
  /** an id that is in use for something else */
  | 'idInUse'
  /** more than the cap allows */
  | 'tooLarge'
  | 'setupToken'
  | 'signedOut';

export type Refusal = {
  code: RefusalCode;
  /** dotted path of the field, as in the input; null if it concerns the whole */
  field: string | null;
  /** what, where and how to mend it */
  message: string;
  /** with `conflict`: the newest revision and its body (null: removed), to show beside what was sent */
  conflict?: { revision: number; body: unknown; by: string; at: string };
  /** all field errors of a `badInput` */
  fields?: { field: string; message: string }[];
};
