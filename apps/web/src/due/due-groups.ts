import type { DueLineView } from '@quartermark/api/client';
import { type DueGroup, type DueOrder, dueGroup, type Spoken } from '@quartermark/engine/display';

/** Lines under their headings, both in the order in which the lines come. */
export function dueGroups(
  lines: readonly DueLineView[],
  order: DueOrder,
  spoken: Spoken,
): (DueGroup & { lines: DueLineView[] })[] {
  const groups = new Map<string, DueGroup & { lines: DueLineView[] }>();
  for (const line of lines) {
    const group = dueGroup(line, order, spoken);
    const known = groups.get(group.key);
    if (known) known.lines.push(line);
    else groups.set(group.key, { ...group, lines: [line] });
  }
  return [...groups.values()];
}
