/** What the names of a garage's things are, by their ids; what is not in it has left. */
export type FactNames = {
  cars: Readonly<Record<string, string>>;
  items: Readonly<Record<string, string>>;
  events: Readonly<Record<string, string>>;
};

/** The parts of a fact's id: `car/kind/subject`; null where it is none. */
export function factParts(id: string): { car: string; kind: string; subject: string } | null {
  const [, car, kind, subject] = /^([^/]+)\/([^/]+)\/(.+)$/s.exec(id) ?? [];
  return car === undefined || kind === undefined || subject === undefined
    ? null
    : { car, kind, subject };
}

/** The cars that facts are about, each once. */
export const carsOfFacts = (facts: readonly string[]): string[] => [
  ...new Set(facts.flatMap((id) => factParts(id)?.car ?? [])),
];

/**
 * What a fact is about, in words.
 *
 * @example factWords('c-1/overdue/i-1:2026-01-10', names) // "Tarnfell Corvo: brake fluid, overdue"
 */
export function factWords(id: string, names: FactNames): string {
  const parts = factParts(id);
  if (parts === null) return 'Something this garage does not know';
  const { car, kind, subject } = parts;
  const about = aboutWords(kind, subject, names);
  return `${names.cars[car] ?? 'A car that has left'}: ${about}`;
}

function aboutWords(kind: string, subject: string, { items, events }: FactNames): string {
  const item = () => items[subject.split(':')[0] ?? ''] ?? 'an item no longer watched';
  switch (kind) {
    case 'overdue':
      return `${item()}, overdue`;
    case 'dueSoon':
      return `${item()}, due soon`;
    case 'verdict':
      return `whether it is ready for ${events[subject] ?? 'an event no longer on the calendar'}`;
    case 'oilNotice':
      return 'a notice of its oil';
    case 'missedLook':
      return 'the look at its oil';
    case 'notWorkedOut':
      return 'that it could not be worked out';
    case 'urgent':
      return 'what forbids driving it or cannot wait';
    default:
      return 'something the letter told';
  }
}
