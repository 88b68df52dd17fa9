import { spawnSync } from 'node:child_process';

const works = (command, args) => spawnSync(command, args, { stdio: 'ignore' }).status === 0;

/** Programs outside npm that some tests need, by the Debian package that brings them. */
const NEEDED = [
  { package: 'redis-server', command: 'redis-server', tests: 'the queue on Redis' },
  { package: 'chromium', command: 'chromium', tests: 'the browser journeys' },
  // pdftotext answers -v, and fails at --version in older releases
  { package: 'poppler-utils', command: 'pdftotext', asks: '-v', tests: 'the printed sheet' },
];

const isMissing = ({ command, asks = '--version' }) => !works(command, [asks]);

/**
 * Installs what is missing where that is allowed without asking anybody.
 *
 * @returns {{ package: string, tests: string, why: string }[]} what is still missing, and why
 */
export function ensureTools() {
  const missing = NEEDED.filter(isMissing);
  if (missing.length === 0) return [];
  const prefix = permission();
  if (prefix === null) return missing.map((tool) => ({ ...tool, why: 'no leave to install it' }));
  const names = missing.map((tool) => tool.package);
  console.log(`Installing ${names.join(', ')} for the tests.`);
  const apt = (...args) => {
    const [command = '', ...rest] = [...prefix, 'apt-get', ...args];
    // RUNLEVEL=1 keeps Debian from starting the server as a service
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive', RUNLEVEL: '1' };
    return spawnSync(command, rest, { env, stdio: ['ignore', 'ignore', 'inherit'] });
  };
  apt('update', '-q');
  apt('install', '-q', '-y', '--no-install-recommends', ...names);
  return missing.filter(isMissing).map((tool) => ({ ...tool, why: 'its installation failed' }));
}

function permission() {
  if (!works('apt-get', ['--version'])) return null;
  if (process.getuid?.() === 0) return [];
  return works('sudo', ['-n', 'true'])
    ? ['sudo', '-n', '--preserve-env=DEBIAN_FRONTEND,RUNLEVEL']
    : null;
}
