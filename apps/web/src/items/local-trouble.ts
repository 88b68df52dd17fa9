import type { Trouble } from '../client/refusal-words.ts';
import type { Problems } from './limit-fields.ts';

/** What was found wrong before anything was sent, in the form in which the server would have said it. */
export function localTrouble(problems: Problems): Trouble {
  const [first = ''] = Object.values(problems);
  return { place: 'field', fields: problems, message: first, refusal: null };
}
