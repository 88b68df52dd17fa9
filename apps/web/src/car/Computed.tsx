import type { CarView } from '@quartermark/api/client';
import { momentWords } from '../garage/moment-words.ts';

/** When the figures were worked out. Its place is held while they change, so that nothing moves. */
export function Computed({ view }: { view: CarView }) {
  const { computedAt, garage, version, wantedVersion, failure } = view;
  const behind = version < wantedVersion && !failure;
  return (
    <span aria-live="polite">
      {computedAt ? `By the log of ${momentWords(computedAt, garage.zone)}` : ''}
      {behind ? ' · being recomputed …' : ''}
    </span>
  );
}
