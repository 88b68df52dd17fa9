const PARTS = ['text', 'unit'];

/**
 * A field's dotted path as a person reads it: its last part that says something.
 *
 * @example fieldWords('entry.odometer.text') // "Odometer"
 * @example fieldWords('car.odoDigits') // "Odo digits"
 */
export function fieldWords(path: string): string {
  const parts = path.split('.').filter((part) => !PARTS.includes(part) && !/^\d+$/.test(part));
  const spaced = (parts.at(-1) ?? path).replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
  return spaced.charAt(0).toUpperCase() + spaced.slice(1);
}

/** A field's message with its name before it, unless it begins with that already. */
export function namedMessage(path: string, message: string): string {
  const name = fieldWords(path);
  if (message.toLowerCase().startsWith(name.toLowerCase())) return message;
  return `${name}: ${message.charAt(0).toLowerCase()}${message.slice(1)}`;
}
