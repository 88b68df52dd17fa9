import type { OverviewPage, OverviewRow } from '@quartermark/api/client';
import { ask, pageCache } from './ask.ts';

/** All cars of a garage, however many pages they take; for what names each of them. */
export async function everyCar(garageId: string): Promise<OverviewRow[]> {
  const rows: OverviewRow[] = [];
  let cursor: string | undefined;
  do {
    const asked = { garageId, ...(cursor === undefined ? {} : { cursor }) };
    const page: OverviewPage = await pageCache().fetchQuery(
      ask().garage.overview.queryOptions(asked),
    );
    rows.push(...page.rows);
    cursor = page.next ?? undefined;
  } while (cursor !== undefined);
  return rows;
}
