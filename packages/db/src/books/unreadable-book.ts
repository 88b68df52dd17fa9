/** A stored body that the log's schema no longer accepts; names it, so that it can be mended. */
export class UnreadableBook extends Error {
  override readonly name = 'UnreadableBook';
  constructor(
    readonly carId: string,
    readonly part: 'car' | 'item' | 'layUp' | 'entry' | 'event' | 'order',
    readonly partId: string,
    /** what the schema said */
    readonly problem: string,
  ) {
    super(`could not read the book of car ${carId}: ${part} ${partId}: ${problem}`);
  }
}
