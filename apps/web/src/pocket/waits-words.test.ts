import { expect, test } from 'vitest';
import type { Command, CommandState } from './queue/command.ts';
import { waitsWords } from './waits-words.ts';

const entry = (state: CommandState = 'waiting') => ({ verb: 'entry.record', state }) as Command;
const tick = (state: CommandState = 'waiting') => ({ verb: 'event.tick', state }) as Command;

test.each([
  [[entry()], '1 entry waits for signal.'],
  [[entry(), entry('sending')], '2 entries wait for signal.'],
  [[tick()], '1 tick waits for signal.'],
  [[entry(), tick(), tick()], '1 entry and 2 ticks wait for signal.'],
  [[entry(), tick('refused')], '1 entry waits for signal, 1 tick needs your decision.'],
  [[entry('conflict'), tick('refused')], '1 entry and 1 tick need your decision.'],
])('waitsWords() of %j', (commands, words) => {
  expect(waitsWords({ commands, end: 'noSignal' })).toBe(words);
});

test('waitsWords() says what a line of somebody who is signed out waits for', () => {
  expect(waitsWords({ commands: [tick(), tick()], end: 'signedOut' })).toBe(
    '2 ticks wait for you to sign in.',
  );
});
