export { readAllowedPlaces, readAllowedPorts } from './address-policy/allowed.ts';
export { AddressPolicy, type Resolver } from './address-policy/policy.ts';
export type { Outcome } from './outcome.ts';
export { afterTry, type Delivery, MOST_TRIES } from './retry.ts';
export type { Letter, Mailbox } from './smtp/letter.ts';
export { type MailServer, sendLetter } from './smtp/send-letter.ts';
export { testLetter } from './smtp/test-letter.ts';
export { postWebhook, type Webhook } from './webhook/post-webhook.ts';
export { verifySignature } from './webhook/signature.ts';
