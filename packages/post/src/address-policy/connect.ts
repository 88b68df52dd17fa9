import net from 'node:net';
import type { Destination } from './policy.ts';

/**
 * A connection to exactly the address that was looked at: no name is resolved here.
 *
 * @throws NodeJS.ErrnoException where there is none within the time
 */
export function connectTo({ address, port }: Destination, withinMs: number): Promise<net.Socket> {
  return new Promise((resolve, reject) => {
    const socket = net.connect({ host: address, port });
    const failed = (error: Error) => {
      socket.destroy();
      reject(error);
    };
    socket.setTimeout(withinMs, () => failed(late()));
    socket.once('error', failed);
    socket.once('connect', () => {
      socket.setTimeout(0);
      // whoever takes the socket over may not listen yet when the other side breaks off
      socket.on('error', () => socket.destroy());
      socket.off('error', failed);
      resolve(socket);
    });
  });
}

/** @throws what `doing` throws, or an error of code ETIMEDOUT where it takes longer */
export async function within<T>(withinMs: number, doing: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout | undefined;
  const tooLate = new Promise<never>((_resolve, reject) => {
    timer = setTimeout(() => reject(late()), withinMs);
  });
  return Promise.race([doing, tooLate]).finally(() => clearTimeout(timer));
}

const late = () => Object.assign(new Error('no answer in time'), { code: 'ETIMEDOUT' });
