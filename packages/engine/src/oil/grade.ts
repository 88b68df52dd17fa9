/** An oil as somebody names it; what is not known is left out. */
export type OilNamed = { grade?: string | undefined; approval?: string | undefined };

/** A viscosity grade: how it starts cold (null: not rated) and how thick it is hot (null: not rated). */
export type OilGrade = { winter: number | null; hot: number | null };

type WinterRow = {
  /** the number before W */
  grade: number;
  /** least cold: cranking at most so many mPa s at that temperature, and pumpable at the next */
  crankingMaxMpas: number;
  crankingC: number;
  pumpingMaxMpas: number;
  pumpingC: number;
  /** kinematic viscosity at 100 C, at least, mm2/s */
  at100Min: number;
};
type HotRow = {
  grade: number;
  /** kinematic viscosity at 100 C, from this to below that, mm2/s */
  at100Min: number;
  at100Below: number;
  /** viscosity at 150 C and high shear, at least, mPa s */
  at150Min: number;
};

/** Source: SAE J300 JAN2015, Engine Oil Viscosity Classification, table 1. */
export const WINTER_GRADES: readonly WinterRow[] = [
  [0, 6200, -35, -40, 3.8],
  [5, 6600, -30, -35, 3.8],
  [10, 7000, -25, -30, 4.1],
  [15, 7000, -20, -25, 5.6],
  [20, 9500, -15, -20, 5.6],
  [25, 13_000, -10, -15, 9.3],
].map(([grade = 0, crankingMaxMpas = 0, crankingC = 0, pumpingC = 0, at100Min = 0]) => ({
  grade,
  crankingMaxMpas,
  crankingC,
  pumpingMaxMpas: 60_000,
  pumpingC,
  at100Min,
}));

/** Source: as above. Grade 40 has a second limit at 150 C: see `leastAt150`. */
export const HOT_GRADES: readonly HotRow[] = [
  [8, 4, 6.1, 1.7],
  [12, 5, 7.1, 2],
  [16, 6.1, 8.2, 2.3],
  [20, 6.9, 9.3, 2.6],
  [30, 9.3, 12.5, 2.9],
  [40, 12.5, 16.3, 3.5],
  [50, 16.3, 21.9, 3.7],
  [60, 21.9, 26.1, 3.7],
].map(([grade = 0, at100Min = 0, at100Below = 0, at150Min = 0]) => ({
  grade,
  at100Min,
  at100Below,
  at150Min,
}));

/** Grade 40 of oils that are not rated for the coldest starts. Source: as above. */
const AT_150_OF_HEAVY_40 = 3.7;
const LIGHT_WINTER_MAX = 10;

/**
 * Reads a grade as people write it: "5W-40", "0W 20", "15w/50", "SAE 40", "10W".
 *
 * @returns null where it names no grade of the classification
 */
export function readGrade(text: string): OilGrade | null {
  const plain = text
    .trim()
    .toUpperCase()
    .replace(/^SAE[\s-]*/, '');
  const parts = /^(?:(\d{1,2})\s*W(?:\s*[-‐‑–—/]?\s*(\d{1,2}))?|(\d{1,2}))$/.exec(plain);
  if (parts === null) return null;
  const number = (text: string | undefined) => (text === undefined ? null : Number(text));
  const [winter, hot] = [number(parts[1]), number(parts[2] ?? parts[3])];
  const known = (rows: readonly { grade: number }[], of: number | null) =>
    of === null || rows.some(({ grade }) => grade === of);
  return known(WINTER_GRADES, winter) && known(HOT_GRADES, hot) ? { winter, hot } : null;
}

/** Least viscosity at 150 C and high shear, mPa s; null where the grade is not rated hot. */
export function leastAt150({ winter, hot }: OilGrade): number | null {
  if (hot === 40 && (winter === null || winter > LIGHT_WINTER_MAX)) return AT_150_OF_HEAVY_40;
  return HOT_GRADES.find(({ grade }) => grade === hot)?.at150Min ?? null;
}

/** What was poured beside what is asked for. */
export type GradeFit = {
  /** when hot; unknown where one of them is not rated hot */
  hot: 'same' | 'thinner' | 'thicker' | 'unknown';
  /** the same grade when hot, but allowed to be thinner at 150 C */
  thinnerAt150: boolean;
  /** starts in the cold: rated for as cold, for colder, or only for warmer ones; nothing asked: same */
  cold: 'same' | 'colder' | 'warmer';
};

/**
 * Compares two grades by their ratings. What is thinner or thicker is not wrong by itself: the car's manual says
 * which grades it allows in which climate.
 */
export function fitOfGrade(asked: OilGrade, poured: OilGrade): GradeFit {
  const [asked150, poured150] = [leastAt150(asked), leastAt150(poured)];
  const hot =
    asked.hot === null || poured.hot === null
      ? 'unknown'
      : poured.hot === asked.hot
        ? 'same'
        : poured.hot < asked.hot
          ? 'thinner'
          : 'thicker';
  return {
    hot,
    thinnerAt150: hot === 'same' && asked150 !== null && poured150 !== null && poured150 < asked150,
    cold: coldFit(asked.winter, poured.winter),
  };
}

function coldFit(asked: number | null, poured: number | null): GradeFit['cold'] {
  if (asked === null || asked === poured) return 'same';
  return poured !== null && poured < asked ? 'colder' : 'warmer';
}
