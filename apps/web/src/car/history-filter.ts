import { ENTRY_KINDS, type EntryKind } from '@quartermark/engine/log';

/** Which entries of a car's history are shown. */
export type HistoryFilter = {
  kind: EntryKind | null;
  /** words to look for, as typed */
  text: string;
  /** removed entries too */
  removed: boolean;
};

export const TEXT_MAX = 200;

type Address = Readonly<Record<string, string | string[] | undefined>>;

/** The filter that a page's address carries; what it cannot read it leaves out. */
export function readFilter(address: Address): HistoryFilter {
  const one = (name: string) => {
    const value = address[name];
    return (Array.isArray(value) ? value[0] : value) ?? '';
  };
  return {
    kind: ENTRY_KINDS.find((kind) => kind === one('kind')) ?? null,
    text: one('text').slice(0, TEXT_MAX),
    removed: one('removed') === 'yes',
  };
}

/** The filter as the query of an address, with its "?"; empty where nothing is filtered. */
export function writeFilter({ kind, text, removed }: HistoryFilter): string {
  const query = new URLSearchParams();
  if (kind) query.set('kind', kind);
  if (text.trim() !== '') query.set('text', text.trim());
  if (removed) query.set('removed', 'yes');
  const written = query.toString();
  return written === '' ? '' : `?${written}`;
}

/** What the api is asked; the server's first fetch and the screen must ask the same. */
export function historyQuestion(
  where: { garageId: string; carId: string },
  { kind, text, removed }: HistoryFilter,
) {
  const words = text.trim();
  return {
    ...where,
    ...(kind ? { kind } : {}),
    ...(words === '' ? {} : { text: words }),
    ...(removed ? { removed } : {}),
  };
}
