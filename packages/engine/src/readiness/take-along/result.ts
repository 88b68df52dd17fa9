/** Oil to take along, in litres, as much as is missing to MAX today among it. */
export type OilToTake = {
  /** null: not measured, or nobody said what the car does there */
  likelyL: number | null;
  /** not exceeded nine times in ten */
  cautiousL: number | null;
  /** false: the rate was never measured on this car, so no number is shown as one */
  measured: boolean;
  /** as its manual asks; null where nobody said */
  grade: string | null;
  approval: string | null;
  /** ids of the entries it rests on */
  evidence: string[];
  /** a sentence or some: where it comes from, or what would help */
  reason: string;
};

/** Fuel for what the car does there, and for the way there and back, in litres. */
export type FuelToTake = {
  /** null: the fill-ups do not tell, or nobody said what the car does there */
  likelyL: number | null;
  /** not exceeded nine times in ten */
  cautiousL: number | null;
  /** the least its profile asks for; null where nobody said */
  octane: number | null;
  /** ids of the fill-ups it rests on */
  evidence: string[];
  reason: string;
};

/** What to take along to an event. */
export type TakeAlong = { oil: OilToTake; fuel: FuelToTake };
