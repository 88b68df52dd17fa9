import { noteRecorded } from '../sheet/last-recorded.ts';
import { type Command, isStuck, isTick, type NewCommand, type NewPhoto } from './command.ts';
import { listCommands, putInLine } from './line.ts';
import { type Doors, type PassEnd, sendLine } from './send.ts';
import { type PocketDb, pocketDb } from './store.ts';

export type LineState = {
  /** false until the store was read */
  read: boolean;
  commands: readonly Command[];
  /** how the last pass ended; null before the first */
  end: PassEnd | null;
  sending: boolean;
};

const AGAIN_MS = 15_000;
const AGAIN_MAX_MS = 5 * 60_000;
const NAME = 'quartermark-line';

/**
 * Keeps the line moving while a page is open. It is tried when a page begins, when something is put in,
 * when the browser says that there is signal, when the page comes into sight, and every 15 s while
 * something waits, less often the longer no answer comes. Tabs take turns under a lock where the browser
 * has one; where it has none they may send the same command twice, which the server answers once.
 */
class Keeper {
  #state: LineState = { read: false, commands: [], end: null, sending: false };
  readonly #listeners = new Set<() => void>();
  #doors: Doors | null = null;
  #again = false;
  #failures = 0;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #others: BroadcastChannel | null = null;

  readonly state = (): LineState => this.#state;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  /** @returns how to stop */
  start(doors: Doors): () => void {
    this.#doors = doors;
    this.#others = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(NAME);
    this.#others?.addEventListener('message', () => void this.reload());
    const seen = () => {
      if (document.visibilityState === 'visible') this.poke();
    };
    const poke = () => this.poke();
    window.addEventListener('online', poke);
    document.addEventListener('visibilitychange', seen);
    void this.reload().then(poke);
    return () => {
      this.#doors = null;
      clearTimeout(this.#timer);
      this.#others?.close();
      window.removeEventListener('online', poke);
      document.removeEventListener('visibilitychange', seen);
    };
  }

  /** Writes a command down, then tries to send. @throws what IndexedDB threw: nothing was saved then */
  async put(asked: NewCommand, photos: readonly NewPhoto[] = []): Promise<Command> {
    const command = await putInLine(await pocketDb(), asked, photos);
    if (!isTick(asked)) await noteRecorded(asked.garageId);
    await this.changed();
    this.poke();
    return command;
  }

  /** Does something to the line, then shows it and tries to send. */
  async act<T>(work: (db: PocketDb) => Promise<T>): Promise<T> {
    const done = await work(await pocketDb());
    await this.changed();
    this.poke();
    return done;
  }

  /** Tries to send, now. */
  poke(): void {
    if (this.#state.sending) {
      this.#again = true;
      return;
    }
    clearTimeout(this.#timer);
    if (this.#doors) void this.#pass(this.#doors);
  }

  async reload(): Promise<void> {
    try {
      this.#set({ commands: await listCommands(await pocketDb()), read: true });
    } catch {
      // a browser that keeps nothing has nothing waiting; saving says so when it is tried
      this.#set({ commands: [], read: true });
    }
  }

  async changed(): Promise<void> {
    await this.reload();
    this.#others?.postMessage(null);
  }

  async #pass(doors: Doors): Promise<void> {
    if (!this.#state.commands.some((one) => !isStuck(one))) return;
    this.#set({ sending: true });
    try {
      const db = await pocketDb();
      const end = await inTurn(() => sendLine(db, doors, Date.now, () => void this.changed()));
      this.#failures = end === 'allSent' ? 0 : this.#failures + 1;
      this.#set({ end });
    } catch {
      // the store went away under the pass; what is in it is safe, and the next pass opens it anew
      this.#failures += 1;
    } finally {
      this.#set({ sending: false });
      await this.changed();
      this.#next();
    }
  }

  #next(): void {
    if (this.#again) {
      this.#again = false;
      this.poke();
      return;
    }
    if (!this.#state.commands.some((one) => !isStuck(one))) return;
    const wait = Math.min(AGAIN_MS * 2 ** Math.max(0, this.#failures - 4), AGAIN_MAX_MS);
    this.#timer = setTimeout(() => this.poke(), wait);
  }

  #set(part: Partial<LineState>): void {
    this.#state = { ...this.#state, ...part };
    for (const listener of this.#listeners) listener();
  }
}

/** One tab at a time, where the browser can say whose turn it is. */
function inTurn<T>(work: () => Promise<T>): Promise<T> {
  // absent outside of a secure context
  const { locks } = navigator as { locks?: LockManager };
  return locks ? locks.request(NAME, work) : work();
}

/** The one line of this browser. */
export const keeper = new Keeper();
