import type { Link, LinkOf } from '../letter/letter.ts';
import { MOST } from './address.ts';

/**
 * The addresses of a garage's pages and forms: the routes of the web app. What a form is filled in with stands in the
 * query, as often as there is of it; of a great many as many as an address holds, and the form shows which they are.
 *
 * @param origin "https://garage.example.org"; empty: paths, for a page of the same house
 * @example linkAddress('', 'g1')({ to: 'serviceForm', car: 'c1', items: ['i1', 'i2'] })
 * // "/g/g1/record/c1/service?item=i1&item=i2"
 */
export function linkAddress(origin: string, garageId: string): LinkOf {
  const garage = `${origin}/g/${part(garageId)}`;
  return (link) => addressAt(garage, link);
}

function addressAt(garage: string, link: Link): string {
  switch (link.to) {
    case 'car':
      return `${garage}/car/${part(link.car)}`;
    case 'carOil':
      return `${garage}/car/${part(link.car)}/oil`;
    case 'event':
      return `${garage}/events/${part(link.event)}`;
    case 'serviceForm':
      return filled(`${garage}/record/${part(link.car)}/service?`, 'item', link.items);
    case 'oilCheckForm':
      return `${garage}/record/${part(link.car)}/oilCheck`;
    case 'orderForm':
      return filled(`${garage}/car/${part(link.car)}/order?`, 'item', link.items);
    case 'putOffForm':
      return filled(`${garage}/letters/put-off?until=${part(link.until)}&`, 'fact', link.facts);
    case 'dueList':
      return `${garage}/due`;
    case 'letterSettings':
      return `${garage}/letters/settings`;
  }
}

/** A slash and a colon may stand in a query as they are (RFC 3986, section 3.4). */
const part = (text: string) => encodeURIComponent(text);
const inQuery = (text: string) => part(text).replaceAll('%2F', '/').replaceAll('%3A', ':');

function filled(form: string, name: string, values: readonly string[]): string {
  let address = form;
  for (const value of values) {
    const longer = `${address}${address === form ? '' : '&'}${name}=${inQuery(value)}`;
    if (longer.length > MOST) break;
    address = longer;
  }
  return address;
}
