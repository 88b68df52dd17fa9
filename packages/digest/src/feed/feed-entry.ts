/** One all-day entry of the calendar feed. */
export type FeedEntry = {
  /** the same for ever, and no other garage's: see `feedEntries()` */
  uid: string;
  /** civil dates, both inclusive */
  start: string;
  end: string;
  summary: string;
  description: string;
  /** http or https; null: nowhere to go */
  url: string | null;
  category: 'Due' | 'Look' | 'Event' | 'Lay-up';
};
