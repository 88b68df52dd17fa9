import type { Link, LinkOf } from '../letter/letter.ts';

/** Escaped, it still fits on a line of mail. */
export const MOST = 800;

/**
 * The address of a link.
 *
 * @throws RangeError if it is no http or https address, is too long for a line of mail or holds characters that
 *   an address cannot hold
 */
export function addressOf(link: Link, linkOf: LinkOf): string {
  const address = linkOf(link);
  if (address.length > MOST || !/^https?:\/\/[!-~]+$/.test(address))
    throw new RangeError(
      `could not link to ${link.to}: "${address.slice(0, 100)}", it should be an http or https address of at most ${MOST} characters`,
    );
  return address;
}
