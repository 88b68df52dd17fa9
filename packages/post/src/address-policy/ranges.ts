import { BlockList, isIP } from 'node:net';

/** What sort of address it is; `public` may be sent to by anybody. */
export type AddressKind =
  | 'public'
  | 'loopback'
  | 'private'
  | 'carrier'
  | 'linkLocal'
  | 'multicast'
  | 'unspecified'
  | 'documentation'
  | 'embedded'
  | 'reserved';

/**
 * Source: the special-purpose address registries of RFC 6890 as amended; RFC 1918 (private), 6598
 * (carrier), 3927 and 4291 (link-local, loopback), 5737, 3849 and 9637 (documentation), 6052 and 8215
 * (NAT64), 3056 (6to4), 4380 (Teredo), 4193 (unique local), 2544 and 5180 (benchmarks), 6666 (discard).
 */
const RANGES: readonly [AddressKind, readonly string[]][] = [
  ['loopback', ['127.0.0.0/8', '::1/128']],
  ['private', ['10.0.0.0/8', '172.16.0.0/12', '192.168.0.0/16', 'fc00::/7', 'fec0::/10']],
  ['carrier', ['100.64.0.0/10']],
  ['linkLocal', ['169.254.0.0/16', 'fe80::/10']],
  ['multicast', ['224.0.0.0/4', 'ff00::/8']],
  ['unspecified', ['0.0.0.0/8', '::/128']],
  [
    'documentation',
    ['192.0.2.0/24', '198.51.100.0/24', '203.0.113.0/24', '2001:db8::/32', '3fff::/20'],
  ],
  // an address of the other family hides in these, or leads through a relay that nobody here knows
  [
    'embedded',
    [
      '::/96',
      '::ffff:0:0/96',
      '::ffff:0:0:0/96',
      '64:ff9b::/96',
      '64:ff9b:1::/48',
      '2001::/32',
      '2002::/16',
      '192.88.99.0/24',
    ],
  ],
  ['reserved', ['192.0.0.0/24', '198.18.0.0/15', '240.0.0.0/4', '100::/64', '2001::/23']],
];

export type Cidr = { address: string; bits: number; family: 'ipv4' | 'ipv6' };

/** `10.0.0.0/8`, or an address alone, which stands for itself. Null where it is neither. */
export function readCidr(text: string): Cidr | null {
  const [address = '', length, ...more] = text.split('/');
  const version = address.includes('%') ? 0 : isIP(address);
  if (version === 0 || more.length > 0) return null;
  const most = version === 4 ? 32 : 128;
  if (length !== undefined && !/^\d{1,3}$/.test(length)) return null;
  const bits = length === undefined ? most : Number(length);
  return bits > most ? null : { address, bits, family: version === 4 ? 'ipv4' : 'ipv6' };
}

/**
 * Addresses of both families, each in a list of its own: a list that holds `::ffff:0:0/96` would
 * otherwise hold every IPv4 address.
 */
export class AddressSet {
  private readonly of = { ipv4: new BlockList(), ipv6: new BlockList() };

  constructor(ranges: readonly Cidr[]) {
    for (const { address, bits, family } of ranges)
      this.of[family].addSubnet(address, bits, family);
  }

  has(address: string): boolean {
    const family = isIP(address) === 4 ? 'ipv4' : 'ipv6';
    return this.of[family].check(address, family);
  }
}

const SETS = RANGES.map(([kind, texts]): [AddressKind, AddressSet] => [
  kind,
  new AddressSet(
    texts.map((text) => {
      const range = readCidr(text);
      if (range === null) throw new TypeError(`cannot read the range ${text}`);
      return range;
    }),
  ),
]);

/** All that is handed out of IPv6 as global unicast (RFC 4291, 2.4); the rest is reserved. */
const GLOBAL_UNICAST = new AddressSet([{ address: '2000::', bits: 3, family: 'ipv6' }]);

/**
 * What sort of address this is. What is no plain address, and one with a zone (`fe80::1%eth0`), is
 * `reserved`.
 */
export function kindOf(address: string): AddressKind {
  const version = address.includes('%') ? 0 : isIP(address);
  if (version === 0) return 'reserved';
  for (const [kind, set] of SETS) if (set.has(address)) return kind;
  return version === 6 && !GLOBAL_UNICAST.has(address) ? 'reserved' : 'public';
}
