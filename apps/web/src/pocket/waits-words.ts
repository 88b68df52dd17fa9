import { type Command, isStuck, isTick } from './queue/command.ts';
import type { LineState } from './queue/keeper.ts';

/** What waits in this browser and what needs a person. @example waitsWords(line) // "2 entries and 1 tick wait for signal." */
export function waitsWords({ commands, end }: Pick<LineState, 'commands' | 'end'>): string {
  const stuck = commands.filter(isStuck);
  const waiting = commands.filter((command) => !isStuck(command));
  const for_ = end === 'signedOut' ? 'for you to sign in' : 'for signal';
  const parts = [
    waiting.length > 0 && `${counted(waiting)} ${waiting.length === 1 ? 'waits' : 'wait'} ${for_}`,
    stuck.length > 0 && `${counted(stuck)} ${stuck.length === 1 ? 'needs' : 'need'} your decision`,
  ].filter((part): part is string => part !== false);
  return `${parts.join(', ')}.`;
}

/** @example counted([entry, tick, tick]) // "1 entry and 2 ticks" */
function counted(commands: readonly Command[]): string {
  const ticks = commands.filter(isTick).length;
  const entries = commands.length - ticks;
  const parts = [
    entries > 0 && (entries === 1 ? '1 entry' : `${entries} entries`),
    ticks > 0 && (ticks === 1 ? '1 tick' : `${ticks} ticks`),
  ];
  return parts.filter((part) => part !== false).join(' and ');
}
