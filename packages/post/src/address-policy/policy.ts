import dns from 'node:dns';
import { isIP } from 'node:net';
import { type AllowedPlaces, type AllowedPorts, type Purpose, plainHost } from './allowed.ts';
import { type AddressKind, kindOf } from './ranges.ts';

/** All addresses of a host, asked once. @throws NodeJS.ErrnoException where it has none */
export type Resolver = (host: string) => Promise<readonly string[]>;

export type Destination = {
  /** the name that was asked for: what TLS checks and what `Host` says */
  host: string;
  /** the one address to connect to; nobody asks for it a second time */
  address: string;
  port: number;
  /** whether it may be sent to only because the operator allows it */
  byLeave: boolean;
};

/** Nothing was sent, and nothing will be before somebody changes a setting; the message is for people. */
export class AddressRefused extends Error {}

const WORDS: Record<Exclude<AddressKind, 'public'>, string> = {
  loopback: 'this machine itself',
  private: 'a private network',
  carrier: 'the inner network of a provider',
  linkLocal: 'the network segment of this machine',
  multicast: 'a group of machines',
  unspecified: 'no particular machine',
  documentation: 'an address that is meant for examples only',
  embedded: 'an address that is wrapped in another',
  reserved: 'a reserved address',
};

/** A name may change its address at any time, so it opens no more than a house network is made of. */
const OPENED_BY_NAME: readonly AddressKind[] = ['loopback', 'private', 'carrier'];
const NEVER: readonly AddressKind[] = ['multicast', 'unspecified'];

/** Who may be sent to: the same for letters and for webhooks. */
export class AddressPolicy {
  constructor(
    private readonly places: AllowedPlaces,
    private readonly ports: AllowedPorts,
    private readonly resolve: Resolver = lookUp,
  ) {}

  /**
   * Asks for the addresses of a host once and picks the one to connect to, IPv4 before IPv6. One
   * forbidden address among several forbids the host: whoever mixes them means no good.
   *
   * @throws AddressRefused where the port or an address is not allowed; what the resolver throws
   */
  async destination(purpose: Purpose, name: string, port: number): Promise<Destination> {
    const host = plainHost(name);
    if (!this.ports[purpose].has(port))
      throw new AddressRefused(
        `Port ${port} is not open for this. Use ${[...this.ports[purpose]].join(', ')}, or ask who runs this server to allow it (POST_ALLOW_PORTS=${purpose}:${port}).`,
      );
    const addresses = isIP(host) ? [host] : await this.resolve(host);
    const [first] = [...addresses].sort((a, b) => isIP(a) - isIP(b));
    if (first === undefined) throw new AddressRefused(`${host} has no address.`);
    for (const address of addresses) this.refuseForbidden(host, address);
    return { host, address: first, port, byLeave: kindOf(first) !== 'public' };
  }

  // the address itself is left out: whoever reads this need not learn what the inner network looks like
  private refuseForbidden(host: string, address: string): void {
    const kind = kindOf(address);
    if (kind === 'public' || this.allows(host, address, kind)) return;
    const mend = NEVER.includes(kind)
      ? 'Name another host.'
      : 'Name a public host, or ask who runs this server to allow it (POST_ALLOW_PRIVATE).';
    throw new AddressRefused(`${host} leads to ${WORDS[kind]}. ${mend}`);
  }

  private allows(host: string, address: string, kind: AddressKind): boolean {
    if (NEVER.includes(kind) || address.includes('%') || isIP(address) === 0) return false;
    if (this.places.hosts.has(host) && OPENED_BY_NAME.includes(kind)) return true;
    return this.places.addresses.has(address);
  }
}

const lookUp: Resolver = async (host) => {
  const found = await dns.promises.lookup(host, { all: true, hints: dns.ADDRCONFIG });
  return found.map(({ address }) => address);
};
