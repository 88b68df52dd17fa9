import type { SentRow } from '@quartermark/api/client';
import { weekdayAhead } from '@quartermark/engine/display';

/** What a row is. @example sentTitle({ kind: 'letter', date: '2026-06-15', whom: 'Tam' }) // "Letter of Mon 15 June 2026 to Tam" */
export function sentTitle({ kind, date, whom }: Pick<SentRow, 'kind' | 'date' | 'whom'>): string {
  const day = weekdayAhead(date, { asOf: null });
  switch (kind) {
    case 'letter':
      return `Letter of ${day} to ${whom ?? 'a member who has left'}`;
    case 'test':
      return `Test letter of ${day} to ${whom ?? 'a member who has left'}`;
    case 'hook':
      return `Webhook of ${day}`;
  }
}

/** Whether all of what is shown arrived, in a sentence. */
export function sentAnswer(rows: readonly { mail: { state: SentRow['mail']['state'] } }[]): string {
  const count = (state: SentRow['mail']['state']) =>
    rows.filter(({ mail }) => mail.state === state).length;
  const [waiting, failed] = [count('waiting'), count('givenUp')];
  if (rows.length === 0) return 'Nothing has left the house.';
  const parts = [
    ...(failed > 0 ? [`${failed} not delivered`] : []),
    ...(waiting > 0 ? [`${waiting} on the way`] : []),
  ];
  const of = rows.length === 1 ? 'the last one' : `the last ${rows.length}`;
  return parts.length === 0 ? `All of ${of} arrived.` : `Of ${of}, ${parts.join(' and ')}.`;
}
