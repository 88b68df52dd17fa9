import { type ChildProcess, spawn } from 'node:child_process';
import path from 'node:path';
import readline from 'node:readline';
import { eventually } from './eventually.ts';

/** What becomes of a letter that was handed over whole; those that follow are accepted. */
export type Turn = 'accept' | 'busy' | 'full' | 'loseAnswer' | 'silent';

export type MailServerIs = {
  plan?: Turn[];
  encryption?: 'none' | 'starttls' | 'implicit';
  cert?: string;
  key?: string;
  password?: string;
};

export type HandedOver = {
  /** the letter as it stood, dots taken back */
  mail: Buffer;
  from: string;
  to: string[];
  encrypted: boolean;
  servername: string | null;
  what: Turn;
};

const SCRIPT = path.join(import.meta.dirname, 'mail-server.mjs');

/** A real mail server on 127.0.0.1, in a process of its own. */
export class MailServerProcess {
  readonly letters: HandedOver[] = [];
  port = 0;
  private constructor(private readonly child: ChildProcess) {}

  static async start(is: MailServerIs = {}): Promise<MailServerProcess> {
    const child = spawn(process.execPath, [SCRIPT, JSON.stringify(is)], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    const server = new MailServerProcess(child);
    readline.createInterface({ input: child.stdout }).on('line', (line) => server.hear(line));
    await eventually('the mail server listens', async () => server.port || null);
    return server;
  }

  /** The letters it was handed, once there are so many. */
  heard(count: number): Promise<HandedOver[]> {
    return eventually(
      `${count} letters at the mail server`,
      async () => this.letters.length >= count && this.letters,
    );
  }

  async stop(): Promise<void> {
    if (this.child.signalCode !== null || this.child.exitCode !== null) return;
    const gone = new Promise((resolve) => this.child.once('exit', resolve));
    this.child.kill('SIGKILL');
    await gone;
  }

  private hear(line: string): void {
    const said = JSON.parse(line) as { port: number } | (HandedOver & { mail: string });
    if ('port' in said) this.port = said.port;
    else this.letters.push({ ...said, mail: Buffer.from(said.mail as string, 'base64') });
  }
}
