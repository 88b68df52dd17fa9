'use client';

/** A photo that was picked and is not kept anywhere else yet. */
export type PickedPhoto = {
  key: string;
  name: string;
  /** address of the picture in this page */
  preview: string;
  /** what is sent; null until it was made small */
  file: Blob | null;
  /** how much of it is away, 0 to 1 */
  share: number;
  /** why it is not away; null while it is on its way */
  problem: string | null;
};

const trays = new Map<string, readonly PickedPhoto[]>();
const listeners = new Set<() => void>();
const NONE: readonly PickedPhoto[] = [];

/** Pictures of kept photos that this page has itself, since the server may not have them yet. */
const previews = new Map<string, string>();

/**
 * What was picked for a form and is still on its way. It outlives the form while the page lives, like the
 * rest of its draft.
 */
export const photoTray = {
  of: (draft: string): readonly PickedPhoto[] => trays.get(draft) ?? NONE,
  watch(onChange: () => void): () => void {
    listeners.add(onChange);
    return () => listeners.delete(onChange);
  },
  add: (draft: string, photo: PickedPhoto) => put(draft, [...photoTray.of(draft), photo]),
  change: (draft: string, key: string, how: Partial<PickedPhoto>) =>
    put(
      draft,
      photoTray.of(draft).map((one) => (one.key === key ? { ...one, ...how } : one)),
    ),
  drop: (draft: string, key: string) =>
    put(
      draft,
      photoTray.of(draft).filter((one) => one.key !== key),
    ),
  empty: (draft: string) => put(draft, NONE),
  keepPreview: (photoId: string, preview: string) => previews.set(photoId, preview),
  previewOf: (photoId: string): string | null => previews.get(photoId) ?? null,
};

function put(draft: string, photos: readonly PickedPhoto[]): void {
  trays.set(draft, photos);
  for (const listener of listeners) listener();
}
