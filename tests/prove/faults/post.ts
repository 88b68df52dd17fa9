import type { Fault } from '../fault.ts';

const POST = 'packages/post/src';
const SMTP = 'tests/integration/post-smtp.test.ts';
const WEBHOOK = 'tests/integration/post-webhook.test.ts';
const POLICY = `${POST}/address-policy/policy.test.ts`;
const DELIVERIES = 'packages/db/src/deliveries';
const JOBS = 'tests/integration/jobs-post.test.ts';
const ON_POSTGRES = 'the post queue on PostgreSQL';

/** A letter that goes astray or twice under two names, or a door into the house. */
export const postFaults: Fault[] = [
  {
    name: 'post: only the first address of a host is looked at',
    edits: [
      {
        file: `${POST}/address-policy/policy.ts`,
        find: 'for (const address of addresses) this.refuseForbidden(host, address);',
        replace: 'this.refuseForbidden(host, first);',
      },
    ],
    test: {
      file: POLICY,
      name: 'destination() is refused at "2002:7f00:1::1", alone or beside a public one',
    },
  },
  {
    name: 'post: an inner address wrapped in IPv6 passes for a public one',
    edits: [
      { file: `${POST}/address-policy/ranges.ts`, find: "      '64:ff9b::/96',\n", replace: '' },
      {
        file: `${POST}/address-policy/ranges.ts`,
        find: 'version === 6 && !GLOBAL_UNICAST.has(address)',
        replace: 'version === 0',
      },
    ],
    test: { file: POLICY, name: 'kindOf() of "64:ff9b::7f00:1" is embedded' },
  },
  {
    name: 'post: a name that was allowed opens link-local addresses too',
    edits: [
      {
        file: `${POST}/address-policy/policy.ts`,
        find: "['loopback', 'private', 'carrier']",
        replace: "['loopback', 'private', 'carrier', 'linkLocal']",
      },
    ],
    test: {
      file: POLICY,
      name: 'destination() at 169.254.169.254 with "hooks.house.test" allowed: false',
    },
  },
  {
    name: 'post: a webhook asks for the name again when it connects',
    edits: [
      {
        file: `${POST}/webhook/post-webhook.ts`,
        find: '        lookup: onlyTo(destination),\n',
        replace: '        ...(onlyTo(destination) && {}),\n',
      },
    ],
    test: {
      file: WEBHOOK,
      name: 'a webhook that is taken is JSON under its name, with a signature that the receiver can verify',
    },
  },
  {
    name: 'post: a signature leaves the time out',
    edits: [
      {
        file: `${POST}/webhook/signature.ts`,
        find: 'timestamp}.`',
        replace: "timestamp && ''}.`",
      },
    ],
    test: {
      file: `${POST}/webhook/signature.test.ts`,
      name: 'verifySignature() does not believe another time',
    },
  },
  {
    name: 'post: a redirect counts as taken',
    edits: [
      {
        file: `${POST}/webhook/post-webhook.ts`,
        find: 'statusCode >= 200 && statusCode < 300',
        replace: 'statusCode >= 200 && statusCode < 400',
      },
    ],
    test: { file: WEBHOOK, name: 'a webhook that is refused follows no redirect by 307' },
  },
  {
    name: 'post: each try makes a Message-ID of its own',
    edits: [
      {
        file: `${POST}/smtp/send-letter.ts`,
        find: '    messageId,\n    date,\n',
        replace: '    date,\n',
      },
    ],
    test: {
      file: SMTP,
      name: 'a letter that is sent again has the same Message-ID where the answer was lost, which is said',
    },
  },
  {
    name: 'post: a server that is busy counts as a refusal for good',
    edits: [
      {
        file: `${POST}/smtp/send-letter.ts`,
        find: 'responseCode !== undefined && responseCode >= 500',
        replace: 'responseCode !== undefined && responseCode >= 400',
      },
    ],
    test: {
      file: SMTP,
      name: 'a letter that is sent again may have been greylisted, with nothing handed over',
    },
  },
  {
    name: 'post: a login is sent in the clear where no encryption is offered',
    edits: [
      {
        file: `${POST}/smtp/send-letter.ts`,
        find: "encryption === 'required' || (login !== undefined && encryption !== 'implicit')",
        replace: "encryption === 'required'",
      },
    ],
    test: { file: SMTP, name: 'encryption is not done without where a login is to be sent' },
  },
  {
    name: 'post: what a server says keeps the addresses it names',
    edits: [
      {
        file: `${POST}/words.ts`,
        find: "'(address)'",
        replace: "'$&'",
      },
    ],
    test: {
      file: SMTP,
      name: 'a letter that is refused for good says why in clean words, without the address',
    },
  },
  {
    name: 'post: a delivery is tried for ever',
    edits: [
      {
        file: `${POST}/retry.ts`,
        find: 'WAITS_S[tries - 1]',
        replace: 'WAITS_S[Math.min(tries, WAITS_S.length) - 1]',
      },
    ],
    test: {
      file: `${POST}/retry.test.ts`,
      name: 'afterTry() waits, and gives up after the last try, with the words',
    },
  },
  {
    name: 'post: nobody writes down that a delivery is in hand',
    edits: [
      {
        file: `${DELIVERIES}/claim.ts`,
        find: '    await tx.update(deliveryDue).set({ dueAt }).where(eq(deliveryDue.id, id));\n',
        replace: '    void dueAt;\n',
      },
    ],
    test: { file: JOBS, name: `${ON_POSTGRES} writes a try down before it sends anything` },
  },
  {
    name: 'post: a try counts only once it is over',
    edits: [
      {
        file: `${DELIVERIES}/claim.ts`,
        find: 'delivery.tries} + 1`,',
        replace: 'delivery.tries}`,',
      },
    ],
    test: { file: JOBS, name: `${ON_POSTGRES} writes a try down before it sends anything` },
  },
  {
    name: 'post: what was delivered stays due',
    edits: [
      {
        file: `${DELIVERIES}/settle.ts`,
        find: '  else await tx.delete(deliveryDue).where(due);\n',
        replace: '',
      },
    ],
    test: {
      file: JOBS,
      name: `${ON_POSTGRES} delivers a letter once, with both parts as they were composed`,
    },
  },
  {
    name: 'post: a further try has a Message-ID of its own',
    edits: [
      {
        file: 'packages/jobs/src/worker/post/send.ts',
        find: '    messageId,\n',
        replace: "    messageId: messageId.replace('@', '.' + Math.random() + '@'),\n",
      },
    ],
    test: {
      file: JOBS,
      name: `${ON_POSTGRES} sends a letter again whose answer was lost, byte for byte, and says that a copy may have come`,
    },
  },
  {
    name: 'post: who wants no mail any more gets it all the same',
    edits: [
      {
        file: `${DELIVERIES}/to-send.ts`,
        find: 'if (!reader.wish.mail)',
        replace: 'if (false as boolean)',
      },
    ],
    test: { file: JOBS, name: `${ON_POSTGRES} sends nothing to whoever wants no mail any more` },
  },
];
