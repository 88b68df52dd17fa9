import { z } from 'zod';

/**
 * Length is what counts: OWASP ASVS 5.0, 6.2.1 (from memory) asks for at least 8 and recommends 15; 10
 * keeps a typed password bearable at the bench. The upper bound only keeps hashing cheap. No rules on which characters.
 */
export const PASSWORD_MIN = 10;
export const PASSWORD_MAX = 128;

export const password = z
  .string()
  .min(PASSWORD_MIN, `is too short; take at least ${PASSWORD_MIN} characters`)
  .max(PASSWORD_MAX, `is too long; take at most ${PASSWORD_MAX} characters`);
