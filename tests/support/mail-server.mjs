import { readFileSync } from 'node:fs';
import { SMTPServer } from 'smtp-server';

// a mail server in a process of its own: `node mail-server.mjs '{"plan": ["busy", "accept"]}'`. Each line it
// writes is JSON: {port}, then {mail, from, to, encrypted, what} for each letter it was handed.

/** @type {{ plan?: string[], encryption?: string, cert?: string, key?: string, password?: string }} */
const { plan = [], encryption = 'none', cert, key, password } = JSON.parse(process.argv[2] ?? '{}');

const say = (what) => process.stdout.write(`${JSON.stringify(what)}\n`);
const refusal = (responseCode, words) => Object.assign(new Error(words), { responseCode });
const answers = {
  busy: () => refusal(451, '4.3.2 Busy, come back later'),
  full: () => refusal(552, '5.2.2 Mailbox of owner@example.net\u202e is full \u0007 now'),
};

const server = new SMTPServer({
  secure: encryption === 'implicit',
  ...(cert && { cert: readFileSync(cert), key: readFileSync(key) }),
  disabledCommands: [
    ...(encryption === 'starttls' ? [] : ['STARTTLS']),
    ...(password === undefined ? ['AUTH'] : []),
  ],
  authOptional: true,
  disableReverseLookup: true,
  onAuth({ username, password: given }, _session, done) {
    if (given === password) return done(null, { user: username });
    done(refusal(535, `5.7.8 ${username} with ${given} is not known here`));
  },
  onRcptTo({ address }, _session, done) {
    if (address.startsWith('nobody@')) return done(refusal(550, `5.1.1 <${address}>: no such box`));
    if (address.startsWith('later@')) return done(refusal(450, '4.2.1 Greylisted'));
    done();
  },
  onData(stream, session, done) {
    const parts = [];
    stream.on('data', (part) => parts.push(part));
    stream.once('end', () => {
      const what = plan.shift() ?? 'accept';
      const { mailFrom, rcptTo } = session.envelope;
      say({
        mail: Buffer.concat(parts).toString('base64'),
        from: mailFrom.address,
        to: rcptTo.map(({ address }) => address),
        encrypted: session.secure,
        servername: session.servername || null,
        what,
      });
      // the letter is kept, the answer never comes
      if (what === 'loseAnswer') {
        for (const { _socket } of server.connections) _socket.destroy();
        return;
      }
      if (what === 'silent') return;
      done(answers[what]?.() ?? null, 'kept as no. 7');
    });
  },
});
server.on('error', () => undefined);
server.listen(0, '127.0.0.1', () => say({ port: server.server.address().port }));
