/** Wakes the relay; no payload. */
export const OUTBOX_CHANNEL = 'qm_outbox';

/** Told after each write of a snapshot or a failure; payload: `SnapshotNotice` as JSON. */
export const SNAPSHOT_CHANNEL = 'qm_snapshot';

/** Ids and a version only: a notification is readable by every role of the database. */
export type SnapshotNotice = {
  /** garage */
  g: string;
  /** car */
  c: string;
  /** input version the snapshot rests on */
  v: number;
};

/** On the same channel: something of the garage beside its cars' figures has changed. */
export type GarageNotice = {
  /** garage */
  g: string;
};
