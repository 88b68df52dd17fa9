/** What the address says behind a name: once, several times or not at all. */
export type SaidInAddress = string | string[] | undefined;

/** Null where it is not said, or not just once. */
export const one = (said: SaidInAddress): string | null => (typeof said === 'string' ? said : null);

/** All that is said, each once. @example every(['a', 'b', 'a']) // ['a', 'b'] */
export const every = (said: SaidInAddress): string[] => [...new Set([said ?? []].flat())];
