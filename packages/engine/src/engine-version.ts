/** Raised whenever the same log could give another answer; stored snapshots of a lower one are redone. */
export const ENGINE_VERSION = 5;
