import { createHash } from 'node:crypto';
import { canonicalJson } from '@quartermark/engine/log';

/**
 * What a command asks for, as a hash: its verb and its input without the parts that may differ when the
 * same command is sent again (its own id, answers to questions, whether it waited in a queue).
 */
export function payloadHash(verb: string, input: Record<string, unknown>): string {
  const {
    commandId: _commandId,
    confirmed: _confirmed,
    queued: _queued,
    garageId: _garageId,
    ...payload
  } = input;
  return createHash('sha256').update(canonicalJson({ verb, payload })).digest('hex');
}
