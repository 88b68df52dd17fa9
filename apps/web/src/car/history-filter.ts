import { ENTRY_KINDS, type EntryKind } from '@quartermark/engine/log';
import { GROUP_OF, KIND_GROUPS, type KindGroup } from './kind-groups.ts';

/** Which entries of a history are shown. */
export type HistoryFilter = {
  /** one kind, or a group of them; null: all */
  kind: EntryKind | KindGroup | null;
  /** words to look for, as typed */
  text: string;
  /** removed entries too */
  removed: boolean;
  /** the id of one car, where the history is of all; null: all */
  car: string | null;
};

export const TEXT_MAX = 200;

type Address = Readonly<Record<string, string | string[] | undefined>>;

/** A kind or a group of kinds by its name; null for anything else. */
export function kindNamed(name: string): HistoryFilter['kind'] {
  return [...ENTRY_KINDS, ...KIND_GROUPS].find((known) => known === name) ?? null;
}

/** The filter that a page's address carries; what it cannot read it leaves out. */
export function readFilter(address: Address): HistoryFilter {
  const one = (name: string) => {
    const value = address[name];
    return (Array.isArray(value) ? value[0] : value) ?? '';
  };
  return {
    kind: kindNamed(one('kind')),
    text: one('text').slice(0, TEXT_MAX),
    removed: one('removed') === 'yes',
    car: /^[\da-f-]{36}$/.test(one('car')) ? one('car') : null,
  };
}

/** The filter as the query of an address, with its "?"; empty where nothing is filtered. */
export function writeFilter({ kind, text, removed, car }: HistoryFilter): string {
  const query = new URLSearchParams();
  if (car) query.set('car', car);
  if (kind) query.set('kind', kind);
  if (text.trim() !== '') query.set('text', text.trim());
  if (removed) query.set('removed', 'yes');
  const written = query.toString();
  return written === '' ? '' : `?${written}`;
}

type Where = { garageId: string; carId?: string };

/** What the api is asked; the server's first fetch and the screen must ask the same. */
export function historyQuestion(where: Where, { kind, text, removed, car }: HistoryFilter) {
  const words = text.trim();
  return {
    ...where,
    ...(car && where.carId === undefined ? { carId: car } : {}),
    ...(kind ? { kinds: kindsOf(kind) } : {}),
    ...(words === '' ? {} : { text: words }),
    ...(removed ? { removed } : {}),
  };
}

function kindsOf(named: EntryKind | KindGroup): EntryKind[] {
  return ENTRY_KINDS.filter((kind) => kind === named || GROUP_OF[kind] === named);
}
