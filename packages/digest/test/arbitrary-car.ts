import { addDays } from '@quartermark/engine/calendar';
import type { DueLine, UrgentFact } from '@quartermark/engine/display';
import type { OrderBy } from '@quartermark/engine/orders';
import type { Verdict } from '@quartermark/engine/readiness';
import fc from 'fast-check';
import type { CarTonight } from '../src/facts/car-tonight.ts';
import { carOf, lineOf, oilOf, standingFor } from './lines.ts';

/** What somebody may type as a name, with everything that breaks writers of text and HTML. */
export const typedName = fc.oneof(
  fc.constantFrom(
    'Brindle',
    'Otter',
    'Battery',
    '<b>Wren</b>',
    '"><img src=x onerror=a()>',
    "a' onclick='b",
    '&amp;',
    '</title><script>',
    'x\r\nBcc: a@b',
    '\u202enope',
  ),
  fc.string({ unit: 'binary', minLength: 1, maxLength: 200, size: 'medium' }),
  fc.string({
    unit: fc.constantFrom('"', '<', '&', 'x'),
    minLength: 150,
    maxLength: 200,
    size: 'max',
  }),
);

const state = fc.constantFrom('overdue', 'dueSoon', 'dueSoon', 'fine', 'unknown', null);

/** Facts of a day are drawn from a few causes, so that they come, go and come again. */
function arbitraryLine(today: string): fc.Arbitrary<DueLine> {
  const order = { on: addDays(today, -4), expected: addDays(today, 2) };
  const parts: OrderBy[] = [
    { kind: 'ordered', order, late: false },
    { kind: 'ordered', order, late: true },
    { kind: 'orderBy', day: addDays(today, -1), feasible: false },
  ];
  return fc
    .record({
      id: fc.constantFrom('i1', 'i2', 'i3'),
      name: typedName,
      state,
      reasonCode: fc.constantFrom(null, null, 'asked' as const),
      binding: fc.constantFrom('months', 'date', 'km'),
      parts: fc.option(fc.constantFrom(...parts)),
      lastDone: fc.constantFrom('2026-01-01', '2026-05-01'),
    })
    .map((line) =>
      lineOf({
        ...line,
        day: addDays(today, line.state === 'overdue' ? -3 : 5),
        remaining: line.binding === 'km' ? 120 : null,
        overdueSince: line.state === 'overdue' ? addDays(today, -2) : null,
      }),
    );
}

const verdict = (today: string): fc.Arbitrary<Verdict> =>
  fc.constantFrom<Verdict>(
    { word: 'ready', by: null },
    { word: 'canBeReady', by: addDays(today, 1) },
    { word: 'notInTime', by: null },
    { word: 'notOnRecord', by: null },
  );

/** A car as it is stored on a morning. */
export function arbitraryCar(id: string, today: string): fc.Arbitrary<CarTonight> {
  const event = { id: 'e1', name: 'Track day', start: '2026-06-20', end: '2026-06-21' };
  const stopped: fc.Arbitrary<UrgentFact> = fc.record({
    stop: fc.constantFrom('doNotDrive' as const, 'wheelsOff' as const, null),
    oil: fc.constantFrom(null, 'low' as const),
    since: fc.constant('2026-06-01'),
    what: typedName,
  });
  return fc
    .record({
      name: typedName,
      eventName: typedName,
      lines: fc.uniqueArray(arbitraryLine(today), {
        selector: ({ id: item }) => item,
        maxLength: 3,
      }),
      urgent: fc.option(stopped, { freq: 6 }),
      status: fc.constantFrom('inUse', 'inUse', 'inUse', 'laidUp', 'sold', 'away'),
      looked: fc.constantFrom(today, '2026-05-20', null),
      notice: fc.constantFrom(null, null, 'useRisen' as const, 'low' as const),
      verdict: fc.option(verdict(today)),
      open: fc.array(typedName, { maxLength: 5 }),
      failedSince: fc.constantFrom(null, null, null, '2026-06-02'),
      putOff: fc.constantFrom(null, addDays(today, -1), addDays(today, 3)),
    })
    .map((of) => {
      const notices =
        of.notice === null
          ? []
          : [
              {
                id: `oil:${of.notice}`,
                kind: of.notice,
                entry: 'x',
                on: '2026-06-01',
                answer: null,
              },
            ];
      const { name, failedSince, urgent, lines, status } = of;
      const ids = ['overdue/i1', 'dueSoon/i2'].map((subject) => `${id}/${subject}:2026-01-01`);
      const until = of.putOff;
      return carOf(
        {
          id,
          name,
          failedSince,
          events: of.verdict
            ? [standingFor({ ...event, name: of.eventName }, of.verdict, of.open)]
            : [],
          putOffs: until === null ? [] : ids.map((fact) => ({ fact, until, grade: 0 })),
          known: { lane: { status }, lines, urgent, oil: { ...oilOf(of.looked, today), notices } },
        },
        today,
      );
    });
}
