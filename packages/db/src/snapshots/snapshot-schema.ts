/**
 * Form of `snapshot.lane` and `snapshot_detail.detail`. A stored snapshot of another form is shown as
 * "being recomputed". Raise it together with the engine's version, which is what makes the worker
 * redo what is stored.
 */
export const SNAPSHOT_SCHEMA = 4;
