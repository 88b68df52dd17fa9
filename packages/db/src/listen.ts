import postgres from 'postgres';

export type Listener = {
  /** resolves once the server has confirmed the first subscription */
  ready: Promise<void>;
  close(): Promise<void>;
};

const FIRST_WAIT_MS = 50;
const LONGEST_WAIT_MS = 2_000;

/**
 * Listens on one channel over a connection of its own, for as long as it takes.
 *
 * Notifications sent while the line is down are lost for good, so `onResync` is called after every
 * subscription, the first one included: whoever listens must then look at everything anew.
 *
 * The driver's own `listen` gives up for ever if the server is still away at its first attempt to
 * come back. Here each attempt that fails is followed by another, at most 2 s later.
 *
 * @param url a direct address; a pooler that hands out connections per transaction cannot carry this
 */
export function listen(
  url: string,
  channel: string,
  onMessage: (payload: string) => void,
  onResync: () => void,
): Listener {
  let closed = false;
  let waitMs = FIRST_WAIT_MS;
  let timer: NodeJS.Timeout | undefined;
  let line: postgres.Sql | undefined;
  let confirmFirst = () => {};
  const ready = new Promise<void>((resolve) => {
    confirmFirst = resolve;
  });

  const again = () => {
    if (closed || timer) return;
    timer = setTimeout(open, waitMs);
    waitMs = Math.min(waitMs * 2, LONGEST_WAIT_MS);
  };

  function open() {
    timer = undefined;
    if (closed) return;
    let lost = false;
    const lose = () => {
      if (lost) return;
      lost = true;
      void opened.end({ timeout: 0 }).catch(() => {});
      again();
    };
    const opened = subscribe(url, channel, onMessage, lose);
    line = opened;
    opened.unsafe(`listen "${channel}"`).then(
      () => {
        if (lost || closed) return;
        waitMs = FIRST_WAIT_MS;
        confirmFirst();
        onResync();
      },
      () => lose(),
    );
  }

  open();
  return {
    ready,
    async close() {
      closed = true;
      clearTimeout(timer);
      await line?.end({ timeout: 1 });
    },
  };
}

type WithNotify = postgres.Options<Record<string, never>> & {
  onnotify: (channel: string, payload: string) => void;
};

function subscribe(
  url: string,
  channel: string,
  onMessage: (payload: string) => void,
  onLost: () => void,
): postgres.Sql {
  const options: WithNotify = {
    max: 1,
    idle_timeout: 0,
    max_lifetime: null,
    fetch_types: false,
    connect_timeout: 5,
    onnotice: () => {},
    onclose: onLost,
    // the driver reads this option but its types leave it out
    onnotify: (from, payload) => {
      if (from === channel) onMessage(payload);
    },
    connection: { application_name: `quartermark listen ${channel}` },
  };
  return postgres(url, options);
}
