/**
 * The promise: **whatever is committed is recomputed.** At-least-once delivery, effect exactly once by
 * version; emptying Redis loses nothing; a job that fails for good leaves a row that a person can see
 * ("not updated since ..., because ...") and retry.
 *
 * The life of a recompute: an entry is committed together with its outbox row -> the relay, woken by the
 * notification (or within 5 s by its poll), publishes the row and marks it after the queue's
 * acknowledgement -> a job reads the car's present inputs and writes the snapshot if it is later than the
 * stored one -> listeners are told. One job per car waits and one runs, however many entries arrive.
 *
 * What happens if
 * - **a handler throws**: five tries within 2 s; then the failure becomes a row with its cause, and the
 *   reconciler tries again after 1 min, 2 min ... at most 1 h. A new entry does not wait for that.
 * - **SIGTERM or SIGINT arrives**: nothing new is taken, running jobs get 4 s, then the process ends. A
 *   job cut off is taken over.
 * - **the process is killed** (SIGKILL, power): before the job was published, its row is still in the
 *   outbox; between publication and mark, it is published twice and the second job finds nothing to do;
 *   during the job, another worker takes it over after the lock (10 s) has run out. A job that kills its
 *   process again and again is given up and leaves the same visible row.
 * - **Redis is emptied or replaced**: the reconciler finds cars whose `done` is behind `wanted` within
 *   60 s, and schedules the night tick anew. A night's work that was lost is found by the next tick.
 * - **PostgreSQL is restarted**: entries cannot be committed meanwhile; afterwards the relay listens
 *   again and empties the outbox, jobs that failed for that reason are found by the reconciler.
 * - **two workers run**: rows are taken under locks the other skips, jobs are locked by the queue, and a
 *   snapshot is replaced only by a later one. A worker with an older engine may write; the newer one
 *   redoes it.
 * - **midnight passes**: each garage's cars are redone after its own midnight, on a queue of their own,
 *   behind which no entry waits.
 *
 * **A letter that is composed leaves the house**, or a row says why it did not. A try is written down before anything
 * is sent, and nobody else tries before its lease (10 min) is over; how it ended is written down afterwards. What
 * happens to letters if
 * - **the process is killed before the try**: the next worker finds it due, within 60 s.
 * - **it is killed between the try's note and its end**: it is tried again after the lease, under the same Message-ID
 *   and with the same parts. Where the mail server had taken the first one, a second copy comes that a mailbox knows
 *   by its Message-ID; the row says that this may be so. SMTP has no way to ask, so it is twice rather than never.
 * - **the server is busy, or nobody answers**: eight tries within some 15 hours, then the row is given up.
 * - **the server refuses it, or the address is not allowed**: given up at once, with the server's words.
 * - **the mail server is gone, the reader left or wants no mail any more**: given up, saying so. Nothing is sent.
 * - **Redis is emptied**: what is due stands in the database and is found within 60 s.
 * - **two workers run**: one claims the row, the other passes over it.
 */
export type { Answer } from './answer.ts';
export { answerOf } from './answer.ts';
export { type Lanes, PACE, type Pace, type Work } from './lanes.ts';
export { addressPolicyOf } from './post/address-policy-of.ts';
export { openLanes } from './queue.ts';
export type { Clock, Engine, Point } from './shop.ts';
export { type RunningWorker, startWorker, type WorkerOptions } from './start-worker.ts';
