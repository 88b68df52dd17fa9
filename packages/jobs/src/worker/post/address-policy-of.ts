import {
  AddressPolicy,
  type Resolver,
  readAllowedPlaces,
  readAllowedPorts,
} from '@quartermark/post';

/**
 * Where letters and webhooks may go.
 *
 * @param places as `POST_ALLOW_PRIVATE`: hosts, addresses and ranges of a private network
 * @param ports as `POST_ALLOW_PORTS`: `smtp:PORT` and `webhook:PORT`
 * @throws Error with a sentence that names the entry and the mend
 */
export function addressPolicyOf(places: string, ports: string, resolve?: Resolver): AddressPolicy {
  return new AddressPolicy(readAllowedPlaces(places), readAllowedPorts(ports), resolve);
}
