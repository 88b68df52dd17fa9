import { describe, expect, test } from 'vitest';
import { readAllowedPlaces, readAllowedPorts } from './allowed.ts';
import { AddressPolicy, AddressRefused } from './policy.ts';
import { kindOf } from './ranges.ts';

const KINDS: [string, string[]][] = [
  [
    'public',
    ['1.1.1.1', '9.255.255.255', '11.0.0.0', '100.63.255.255', '100.128.0.0', '126.255.255.255'],
  ],
  ['public', ['128.0.0.0', '172.15.255.255', '172.32.0.0', '192.167.255.255', '223.255.255.255']],
  ['public', ['2001:4860:4860::8888', '2a00:1450::1', '2606:4700::1111', '2003::1']],
  ['loopback', ['127.0.0.1', '127.255.255.254', '::1']],
  ['private', ['10.0.0.0', '10.255.255.255', '172.16.0.1', '172.31.255.255', '192.168.0.1']],
  ['private', ['fc00::1', 'fdff:ffff::1', 'fec0::1']],
  ['carrier', ['100.64.0.0', '100.127.255.255']],
  ['linkLocal', ['169.254.169.254', 'fe80::1', 'febf::1']],
  ['multicast', ['224.0.0.1', '239.255.255.255', 'ff02::1']],
  ['unspecified', ['0.0.0.0', '0.1.2.3', '::']],
  ['documentation', ['192.0.2.1', '198.51.100.1', '203.0.113.255', '2001:db8::1', '3fff::1']],
  ['embedded', ['::ffff:127.0.0.1', '::ffff:1.1.1.1', '::ffff:7f00:1', '::7f00:1']],
  ['embedded', ['64:ff9b::7f00:1', '64:ff9b:1::1', '2002:7f00:1::1', '2001:0:4136:e378::1']],
  ['reserved', ['240.0.0.1', '255.255.255.255', '198.18.0.1', '192.0.0.8', '2001:20::1']],
  ['reserved', ['4000::1', '100::1', 'fe00::1', 'fe80::1%lo', 'mail.house.test', '', '1.2.3']],
];

describe('kindOf()', () => {
  test.each(KINDS.flatMap(([kind, all]) => all.map((one) => [one, kind] as const)))(
    'of "%s" is %s',
    (address, kind) => {
      expect(kindOf(address)).toBe(kind);
    },
  );
});

function policy(addresses: string[], places = '', ports = '') {
  return new AddressPolicy(
    readAllowedPlaces(places),
    readAllowedPorts(ports),
    async () => addresses,
  );
}
const at = (addresses: string[], places = '') =>
  policy(addresses, places).destination('webhook', 'hooks.house.test', 443);

describe('destination()', () => {
  test('is the one address that was looked up, IPv4 before IPv6, under its name', async () => {
    expect(await at(['2606:4700::1111', '1.1.1.1'])).toEqual({
      host: 'hooks.house.test',
      address: '1.1.1.1',
      port: 443,
      byLeave: false,
    });
  });

  test.each(KINDS.filter(([kind]) => kind !== 'public').flatMap(([, all]) => all))(
    'is refused at "%s", alone or beside a public one',
    async (address) => {
      await expect(at([address])).rejects.toThrow(AddressRefused);
      await expect(at(['1.1.1.1', address])).rejects.toThrow(AddressRefused);
    },
  );

  test.each(['127.0.0.1', '[::1]', '::ffff:127.0.0.1', '10.0.0.1'])(
    'is refused where %s is written instead of a name',
    async (host) => {
      const asked = policy(['1.1.1.1']).destination('smtp', host, 25);
      await expect(asked).rejects.toThrow(AddressRefused);
    },
  );

  test('says nothing of the address it refuses, and how to mend it', async () => {
    await expect(at(['10.11.12.13'])).rejects.toThrow(
      'hooks.house.test leads to a private network. Name a public host, or ask who runs this server to allow it (POST_ALLOW_PRIVATE).',
    );
  });

  test.each([
    ['127.0.0.1', 'hooks.house.test', true],
    ['10.0.0.1', 'HOOKS.house.test.', true],
    ['fd00::7', 'hooks.house.test', true],
    ['169.254.169.254', 'hooks.house.test', false],
    ['::ffff:10.0.0.1', 'hooks.house.test', false],
    ['224.0.0.1', 'hooks.house.test, 224.0.0.0/4', false],
    ['0.0.0.0', '0.0.0.0/0', false],
    ['10.0.0.1', 'house.test', false],
    ['10.0.0.1', '10.0.0.0/30', true],
    ['10.0.0.4', '10.0.0.0/30', false],
    ['10.0.0.1', 'other.test, 10.0.0.1', true],
    ['fd00::8', 'fd00::/64', true],
    ['fe80::1%lo', 'fe80::/10', false],
    ['169.254.7.7', '169.254.7.7/32', true],
  ])('at %s with "%s" allowed: %s', async (address, places, allowed) => {
    const asked = at([address], places);
    if (allowed) expect(await asked).toMatchObject({ address, byLeave: true });
    else await expect(asked).rejects.toThrow(AddressRefused);
  });

  test('asks for a name once each time, so that a changed answer is looked at anew', async () => {
    const answers = [['1.1.1.1'], ['127.0.0.1'], ['1.1.1.1']];
    let asked = 0;
    const rebinding = new AddressPolicy(readAllowedPlaces(''), readAllowedPorts(''), async () => {
      asked += 1;
      return answers.shift() ?? [];
    });
    const go = () => rebinding.destination('webhook', 'hooks.house.test', 443);
    expect(await go()).toMatchObject({ address: '1.1.1.1' });
    expect(asked).toBe(1);
    await expect(go()).rejects.toThrow(AddressRefused);
    expect(asked).toBe(2);
  });

  test.each([
    ['smtp', 25, '', true],
    ['smtp', 465, '', true],
    ['smtp', 587, '', true],
    ['smtp', 443, '', false],
    ['smtp', 2525, '', false],
    ['smtp', 2525, 'webhook:2525', false],
    ['smtp', 2525, 'smtp:2525', true],
    ['webhook', 443, '', true],
    ['webhook', 80, '', false],
    ['webhook', 25, 'smtp:25', false],
    ['webhook', 8443, 'smtp:2525, webhook:8443', true],
  ] as const)('of %s at port %i with "%s" allowed: %s', async (purpose, port, ports, allowed) => {
    const asked = policy(['1.1.1.1'], '', ports).destination(purpose, 'house.test', port);
    if (allowed) expect(await asked).toMatchObject({ port });
    else await expect(asked).rejects.toThrow(AddressRefused);
  });
});

test.each(['10.0.0.0/33', '1.2.3', 'a b', '-x', 'http://a', '10.0.0.1/8/8', 'fe80::1%lo', '/8'])(
  'readAllowedPlaces() refuses "%s" and names it',
  (entry) => {
    expect(() => readAllowedPlaces(`ok.test,${entry}`)).toThrow(`"${entry}"`);
  },
);

test.each(['25', 'smtp:0', 'smtp:65536', 'imap:143', 'smtp: 25'])(
  'readAllowedPorts() refuses "%s" and names it',
  (entry) => {
    expect(() => readAllowedPorts(entry)).toThrow(`"${entry}"`);
  },
);
