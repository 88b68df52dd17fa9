import { AddressSet, type Cidr, readCidr } from './ranges.ts';

/** What the operator allows beyond public addresses. */
export type AllowedPlaces = { hosts: ReadonlySet<string>; addresses: AddressSet };

export type Purpose = 'smtp' | 'webhook';

/** Ports that need no leave: relay, submission under TLS, submission (RFC 5321, 8314); HTTPS. */
const OWN_PORTS: Record<Purpose, readonly number[]> = {
  smtp: [25, 465, 587],
  webhook: [443],
};

export type AllowedPorts = Record<Purpose, ReadonlySet<number>>;

const HOST = /^(?!-)[a-z0-9_-]{1,63}(\.[a-z0-9_-]{1,63})*$/;

/** As a host is compared: small letters, no dot at the end, no brackets round an IPv6 address. */
export const plainHost = (host: string): string =>
  host
    .toLowerCase()
    .replace(/^\[(.*)\]$/, '$1')
    .replace(/\.$/, '');

/**
 * Reads `POST_ALLOW_PRIVATE`: hosts, addresses and ranges, parted by commas
 * (`mail.home.arpa, 192.168.7.0/24, ::1`).
 *
 * @throws Error with a sentence that names the entry and the mend
 */
export function readAllowedPlaces(text: string): AllowedPlaces {
  const hosts = new Set<string>();
  const ranges: Cidr[] = [];
  for (const entry of entriesOf(text)) {
    const range = readCidr(entry);
    const host = plainHost(entry);
    if (range !== null) ranges.push(range);
    else if (HOST.test(host) && /[a-z]/.test(host)) hosts.add(host);
    else
      throw new Error(
        `POST_ALLOW_PRIVATE holds "${entry}": it should be a host such as mail.home.arpa, an address such as 192.168.7.2, or a range such as 192.168.7.0/24.`,
      );
  }
  return { hosts, addresses: new AddressSet(ranges) };
}

/**
 * Reads `POST_ALLOW_PORTS`: ports beyond the usual ones, parted by commas (`smtp:2525, webhook:8443`).
 *
 * @throws Error with a sentence that names the entry and the mend
 */
export function readAllowedPorts(text: string): AllowedPorts {
  const ports = { smtp: new Set(OWN_PORTS.smtp), webhook: new Set(OWN_PORTS.webhook) };
  for (const entry of entriesOf(text)) {
    const [, purpose, digits] = /^(smtp|webhook):(\d{1,5})$/.exec(entry) ?? [];
    const port = Number(digits);
    if (purpose === undefined || port < 1 || port > 65535)
      throw new Error(
        `POST_ALLOW_PORTS holds "${entry}": it should be smtp:PORT or webhook:PORT, such as smtp:2525.`,
      );
    ports[purpose as Purpose].add(port);
  }
  return ports;
}

const entriesOf = (text: string): string[] =>
  text
    .split(',')
    .map((entry) => entry.trim())
    .filter((entry) => entry !== '');
