import { connect, loadBook, withGarage } from '@quartermark/db';
import { analyseBook } from '@quartermark/engine';
import { addDays, daysBetween } from '@quartermark/engine/calendar';
import type { Book } from '@quartermark/engine/log';
import type { Finding } from './finding.ts';
import type { Line } from './line.ts';
import { type Times, timed } from './statistics.ts';

const ROUNDS = 200;
const WARM_UP = 50;

/**
 * The fullest book of the demo garage, analysed whole, beside a bare loop over the same days that only
 * adds up a number for each entry and item: the least that any answer has to look at.
 */
export async function analysisFinding(line: Line): Promise<Finding> {
  const book = await fullestBook(line);
  const days = daysOf(book);
  const took: Times = [];
  const bare: Times = [];
  let kept = 0;
  for (let round = 0; round < WARM_UP + ROUNDS; round += 1) {
    const whole = await timed(() => {
      kept += analyseBook(book).items.length;
    });
    const loop = await timed(() => {
      kept += sumOver(days, book.items.length);
    });
    if (round < WARM_UP) continue;
    took.push(whole);
    bare.push(loop);
  }
  if (kept === 0) throw new Error('nothing was analysed');
  return {
    what: `analyseBook(), ${days.length} days, ${book.entries.length} entries, ${book.items.length} items`,
    took,
    beside: { what: 'a bare loop over the same days', took: bare },
    goal: { ms: 10 },
  };
}

async function fullestBook({ urls, house, carIds }: Line): Promise<Book> {
  const job = connect(urls.jobUrl, { max: 1 });
  const today = new Date().toISOString().slice(0, 10);
  try {
    const books = await withGarage(job, { kind: 'job' }, house.garageId, async (tx) => {
      const found: Book[] = [];
      for (const carId of carIds) {
        const loaded = await loadBook(tx, house.garageId, carId, today);
        if (loaded) found.push(loaded.book);
      }
      return found;
    });
    // the bench's own notes are of today; what counts here is the log of two years
    const [fullest] = books
      .map((book) => ({ ...book, entries: book.entries.filter((entry) => entry.on < today) }))
      .sort((a, b) => b.entries.length - a.entries.length);
    if (!fullest) throw new Error('the demo garage has no book');
    return fullest;
  } finally {
    await job.close();
  }
}

/** For each day from the first entry on: the lengths of what was written that day. */
function daysOf({ entries, asOf }: Book): number[][] {
  const [first = asOf] = entries.map(({ on }) => on).sort();
  const byDay = new Map<string, number[]>();
  for (const entry of entries) {
    const numbers = byDay.get(entry.on) ?? [];
    numbers.push(Object.keys(entry).length);
    byDay.set(entry.on, numbers);
  }
  return Array.from(
    { length: daysBetween(first, asOf) + 1 },
    (_, at) => byDay.get(addDays(first, at)) ?? [],
  );
}

function sumOver(days: readonly number[][], items: number): number {
  let sum = 0;
  for (let item = 0; item < items; item += 1)
    for (const day of days) for (const number of day) sum += number;
  return sum;
}
