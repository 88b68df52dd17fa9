import { createServer } from 'node:net';

/** Says so before anything else is done when the wanted port belongs to another program. */
export function refuseTakenPort(host: string, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', (error: NodeJS.ErrnoException) =>
      reject(new Error(why(host, port, error))),
    );
    probe.listen(port, host, () => probe.close(() => resolve()));
  });
}

function why(host: string, port: number, error: NodeJS.ErrnoException): string {
  if (error.code === 'EADDRINUSE')
    return `Port ${port} is in use by another program. Choose another: PORT=${port + 1} npm start`;
  if (error.code === 'EACCES')
    return `Port ${port} may only be opened by an administrator. Choose one above 1023: PORT=3001 npm start`;
  if (error.code === 'EADDRNOTAVAIL')
    return `HOST is ${host}, which is not an address of this machine. Leave it out for 127.0.0.1.`;
  return `Port ${port} on ${host} cannot be opened: ${error.message}`;
}
