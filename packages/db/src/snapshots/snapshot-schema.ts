/**
 * Form of `snapshot.lane`, `snapshot_detail.detail` and `snapshot_detail.road`. A stored snapshot of another form is shown as
 * "being recomputed". Raise it together with the engine's version, which is what makes the worker
 * redo what is stored.
 */
export const SNAPSHOT_SCHEMA = 5;
