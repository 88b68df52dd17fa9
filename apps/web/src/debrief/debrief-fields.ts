import { ALL_CORNERS, type Corner } from '../record/corners.ts';
import type { FindingFields } from '../record/kinds/finding/fields.ts';
import { GROOVES, type MeasureFields } from '../record/kinds/measure/fields.ts';
import type { TypedText } from '../record/typed.ts';
import type { ZoneField } from '../record/zones.ts';

/** What a car did on one day, or on a whole trip. Null: as proposed, nothing was typed. */
export type UseFields = { count: string | null; distance: string | null; hours: string };

export type MeasuredFields = Pick<MeasureFields, 'tread' | 'pads'>;

/** What is written down of one car, everything as typed. */
export type CarFields = {
  /** empty: nobody said whether it went */
  went: '' | 'yes' | 'no';
  /** by the civil day of their line */
  uses: Record<string, UseFields>;
  /** of distances */
  unit: 'km' | 'mi';
  level: ZoneField;
  added: TypedText;
  odometer: TypedText;
  /** by the id of the part */
  measured: Record<string, MeasuredFields>;
  findings: FindingFields[];
};

/** What became of a line that was sent. */
export type SavedPart = { entryId: string; revision: number; at: 'server' | 'device' };

export type DebriefFields = {
  cars: Record<string, CarFields>;
  /** of each line its entry's id, made once, and kept with what was typed */
  ids: Record<string, string>;
  saved: Record<string, SavedPart>;
};

export const noUse = (): UseFields => ({ count: null, distance: null, hours: '' });

type Units = { unit: 'km' | 'mi'; volumeUnit: 'l' | 'usQt' | 'impQt' };

export function emptyCar({ unit, volumeUnit }: Units): CarFields {
  return {
    went: '',
    uses: {},
    unit,
    level: '',
    added: { text: '', unit: volumeUnit },
    odometer: { text: '', unit },
    measured: {},
    findings: [],
  };
}

const mm = (): TypedText => ({ text: '', unit: 'mm' });

/** The corners that a part is at, by the words in which it was fitted; all of them where they do not tell. */
export function cornersOf(positions: readonly string[]): readonly Corner[] {
  const said = positions.map((position) => position.toLowerCase().replace(/[^a-z]/g, ''));
  const at = ALL_CORNERS.filter((corner) => {
    const end = corner.startsWith('front') ? 'front' : 'rear';
    return said.some((word) => word === corner.toLowerCase() || word === end);
  });
  return at.length === 0 ? ALL_CORNERS : at;
}

/** Nothing measured of a part at these corners. @param sort pads, or anything with a tread */
export function emptyMeasured(sort: 'pads' | 'tyres', corners: readonly Corner[]): MeasuredFields {
  return sort === 'pads'
    ? { tread: [], pads: corners.map((corner) => ({ corner, inner: mm(), outer: mm() })) }
    : {
        pads: [],
        tread: corners.flatMap((corner) =>
          GROOVES.map((groove) => ({ corner, groove, depth: mm() })),
        ),
      };
}

export const isMeasured = ({ tread, pads }: MeasuredFields): boolean =>
  [...tread.map(({ depth }) => depth), ...pads.flatMap(({ inner, outer }) => [inner, outer])].some(
    ({ text }) => text.trim() !== '',
  );

/** Whether something stands in a line of use. */
export const isUsed = ({ count, distance, hours }: UseFields): boolean =>
  [count, distance, hours].some((text) => text !== null && text.trim() !== '');
