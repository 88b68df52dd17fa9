/** A car whose snapshot is to be brought up to date; the job reads the car's state when it runs. */
export type Work = { garageId: string; carId: string };

/** At most 200 cars of one garage that want a new answer though nobody has written anything. */
export type NightWork = {
  garageId: string;
  /** the day, or the engine's version: one chunk of a kind waits at a time */
  why: string;
  carIds: string[];
};

/** Garages whose letters of the night are composed one after another. */
export type LetterWork = { garageIds: string[] };

/** A delivery that is due; the job looks again whether it still is. */
export type PostWork = {
  deliveryId: string;
  /** ms since 1970, which it was found due for: one job waits for each */
  dueMs: number;
};

export type Tries = {
  /** further tries after this one; 0 = this is the last */
  left: number;
};

export type Handlers = {
  recompute(work: Work, tries: Tries): Promise<void>;
  night(work: NightWork, tries: Tries): Promise<void>;
  letters(work: LetterWork): Promise<void>;
  tick(): Promise<void>;
  post(work: PostWork): Promise<void>;
  /** the queue itself gave a job up: its process died several times running */
  gaveUp(work: Work, error: Error): void;
  /** the queue has taken note that the job is done; the end of its round trip */
  finished?(work: Work): void;
};

/**
 * The three queues as the rest sees them: `people` for entries, `night` for the day's sweep, `post` for what leaves
 * the house, so that a slow mail server holds up no night.
 */
export type Lanes = {
  /** Resolves once the queue has the jobs; at most one waiting and one running per car. */
  publish(jobs: Work[]): Promise<void>;
  /** Drops a car's coalescing key, so that a key left behind by a lost job cannot hold the car back. */
  forget(job: Work): Promise<void>;
  publishNight(jobs: NightWork[]): Promise<void>;
  publishLetters(jobs: LetterWork[]): Promise<void>;
  publishPost(jobs: PostWork[]): Promise<void>;
  /** How many deliveries are queued and not begun. */
  waitingPost(): Promise<number>;
  /** Makes sure the night tick is scheduled; does nothing when it is. */
  keepTicking(everyMs: number): Promise<void>;
  work(handlers: Handlers): void;
  close(graceMs: number): Promise<void>;
};

export type Pace = {
  /** safety poll of the relay; notifications come first */
  pollMs: number;
  reconcileMs: number;
  tickMs: number;
  /** a job whose process died is taken over after about this long */
  lockMs: number;
  peopleAtOnce: number;
  nightAtOnce: number;
  postAtOnce: number;
  /** nobody else tries a delivery so long; longer than any try lasts */
  leaseMs: number;
};

export const PACE: Pace = {
  pollMs: 5_000,
  reconcileMs: 60_000,
  tickMs: 5 * 60_000,
  lockMs: 10_000,
  peopleAtOnce: 4,
  nightAtOnce: 1,
  postAtOnce: 4,
  leaseMs: 10 * 60_000,
};
