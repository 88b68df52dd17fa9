import {
  floorWords,
  formatDay,
  leftWords,
  placeName,
  rateWords,
  valueWords,
} from '@quartermark/engine/display';
import type { ComponentWear, PositionWear, UseLeft } from '@quartermark/engine/gear';

export type WearRow = {
  place: string;
  /** likely value and its bounds, or why there is none */
  now: string;
  measured: string;
  rate: string;
  left: string[];
};

/** The figures of each measured place, in words. @param unit of distances */
export function wearTable(wear: ComponentWear, unit: 'km' | 'mi'): WearRow[] {
  return wear.positions.map((position) => ({
    place: placeName(position),
    now: nowWords(position, wear),
    measured: `${valueWords(position.last.value, position.unit)} on ${formatDay(position.last.on)}`,
    rate: rateCell(position, wear, unit),
    left: position.floors.map(
      (floor) => `${floorWords(floor)}: ${leftCell(floor.left, wear, unit)}`,
    ),
  }));
}

function nowWords({ now, unit }: PositionWear, { useKnown }: ComponentWear): string {
  if (now === null) return 'not known';
  const likely = `${useKnown ? '' : 'at most '}${valueWords(now.likely, unit)}`;
  const [low, high] = [valueWords(now.low, unit), valueWords(now.high, unit)];
  return low === high ? likely : `${likely} (${low} to ${high})`;
}

function rateCell(position: PositionWear, { basis }: ComponentWear, unit: 'km' | 'mi'): string {
  const { finding, rate } = position;
  switch (finding) {
    case 'rises':
      return 'none: it rose';
    case 'single':
      return 'one measurement, no rate yet';
    case 'noUse':
      return 'too little use between, no rate yet';
    case 'flat':
      return 'no wear to be seen yet';
    case 'rough':
    case 'line': {
      const words = rateWords(rate?.likely ?? 0, position.unit, basis, unit);
      return finding === 'rough' ? `${words}, rough so far` : words;
    }
  }
}

function leftCell(left: UseLeft | null, { basis }: ComponentWear, unit: 'km' | 'mi'): string {
  if (left === null) return 'not known';
  if (left.likely === 0) return 'reached';
  return leftWords(left, basis, unit);
}

/** What the picture of a place shows. */
export function captionOf(position: PositionWear): string {
  const drawn = position.line
    ? 'Dots: measured. Line: likely. Dashes: as low as it could be, nine times in ten.'
    : 'Dots: measured.';
  return `${placeName(position)} against use. ${drawn}`;
}
