const PARTS = ['text', 'unit'];

/**
 * A field's dotted path as a person reads it: its last part that says something.
 *
 * @example fieldWords('entry.odometer.text') // "Odometer"
 * @example fieldWords('car.odoDigits') // "Odo digits"
 * @example fieldWords('item.limits.0.value') // "Limit 1"
 */
export function fieldWords(path: string): string {
  return limitWords(path) ?? NAMES[path] ?? ASKED[lastPart(path)] ?? lastPart(path);
}

/** What requirements are measured by, of an event or of the garage. */
const ASKED: Record<string, string> = {
  'Odometer days': 'Odometer read within',
  'Inspection days': 'Looked over within',
  'Noise db': 'Loudest allowed',
  'Rules name': 'Rule set',
  'Rules edition': 'Edition of the rule set',
};

/** Where the last part alone would not tell what is meant. */
const NAMES: Record<string, string> = {
  'item.baseline.on': 'Last done',
  'item.baseline.time': 'Last done',
  'item.severe.share': 'Share of hard use',
  'item.severe.classes': 'What is hard use',
  'event.travel.distance.text': 'The way there',
  carId: 'Car',
  'layUp.start': 'First day',
  'layUp.end': 'Last day',
  'hook.url': 'Address of the webhook',
  'mail.from': 'Letters come from',
  'mail.host': 'Server',
  'mail.user': 'Login',
  sendMinute: 'Letters leave at',
  'order.on': 'Ordered on',
  'order.expected': 'Expected on',
  'order.arrived': 'Arrived on',
  'order.from': 'From where',
  'entry.on': 'Day',
  'entry.until': 'Last day',
  'entry.level': 'Mark on the stick',
  'entry.filterRenewed': 'Oil filter',
  'entry.volume.text': 'Amount',
  'entry.items': 'Done',
  'entry.byWhom': 'By whom',
};

/** One of several limits is told by its place, as it stands on the screen. */
function limitWords(path: string): string | null {
  const [, severe, at, use] =
    /^item\.(severe\.)?limits\.(\d+)\.(?:weights\.(\w+)|\w+)$/.exec(path) ?? [];
  if (at === undefined) return null;
  const limit = `${severe ? 'Hard use, limit' : 'Limit'} ${Number(at) + 1}`;
  return use === undefined ? limit : `${limit}, ${use}`;
}

function lastPart(path: string): string {
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
