import type { IncidentSort } from '../log/common.ts';
import type { EntryOf } from '../log/entry.ts';

export type Severity = EntryOf<'finding'>['severity'];
export type Corner = NonNullable<EntryOf<'wheels'>['which']>[number];
export type StorageLine = NonNullable<EntryOf<'layUp'>['lines']>[number];

/** As its people say, or as its log does. */
export type CarStatus = 'inUse' | 'laidUp' | 'inPieces' | 'away' | 'sold';

/** A finding that nothing has answered. */
export type OpenFinding = {
  entry: string;
  on: string;
  what: string;
  /** a corner, or as written; null = not said */
  where: string | null;
  severity: Severity;
  dueBy: string | null;
  photos: readonly string[];
};

/** An incident that nobody has looked into. */
export type OpenIncident = {
  entry: string;
  on: string;
  what: IncidentSort;
  detail: string | null;
  /** what is to be looked at */
  lines: readonly string[];
};

export type WheelsState = {
  /** `notOnRecord`: the log never says that wheels were off */
  state: 'notOnRecord' | 'off' | 'torqued' | 'recheckDue' | 'rechecked';
  /** the corners it is true of; empty with `notOnRecord` */
  corners: readonly Corner[];
  /** the entry it rests on */
  entry: string | null;
  on: string | null;
  /** driven since that entry: km, null = not known */
  sinceKm: number | null;
  /** circuit and autocross sessions and drag-strip days since that entry */
  sinceSessions: number | null;
};

/** Something done for the lay-up that has not been undone. */
export type WakeStep = StorageLine & { layUp: string; keysAt: string | null };

/** What stands in the way, beside what wears out. */
export type Matters = {
  /** the worst first */
  findings: readonly OpenFinding[];
  /** the oldest first */
  incidents: readonly OpenIncident[];
  wheels: WheelsState;
  wakeSteps: readonly WakeStep[];
};

/** What forbids driving a car at all, the worst of it; null = nothing on record does. */
export type Stop = 'doNotDrive' | 'incident' | 'wheelsOff' | 'wakeSteps' | 'inPieces';
