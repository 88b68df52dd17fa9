const FORCED_AFTER_MS = 1500;
const PARENT_LOOK_MS = 500;

type Closable = { close(): Promise<void> };

/**
 * Makes the process end when it should. An open live line would hold the server for good, so at a
 * signal the api is closed first: each line ends with "unavailable", which has the browser dial again.
 * What is still open after a while is cut. And a server whose starter is gone ends itself.
 */
export function stopWell(openApi: () => Closable | undefined): void {
  let stopping = false;
  const stop = () => {
    if (stopping) return;
    stopping = true;
    setTimeout(() => process.exit(0), FORCED_AFTER_MS).unref();
    openApi()
      ?.close()
      .catch((error: unknown) => console.error('could not close the api cleanly:', error));
  };
  process.on('SIGTERM', stop);
  process.on('SIGINT', stop);

  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) stop();
  }, PARENT_LOOK_MS).unref();
}
