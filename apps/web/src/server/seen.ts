import { cookies } from 'next/headers';
import { SEEN_COOKIE } from '../urgent/seen.ts';

/** What this browser laid aside of the urgent facts, read before the first paint so that nothing jumps. */
export async function seenHere(): Promise<string> {
  return (await cookies()).get(SEEN_COOKIE)?.value ?? '';
}
