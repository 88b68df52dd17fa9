import type { GarageView } from '@quartermark/api/client';
import { formatVolume, type Lane, levelWords, outsideTheMarks } from '@quartermark/engine/display';
import { daysAgo } from './days-ago.ts';

type StickProps = { level: NonNullable<Lane['level']>; garage: GarageView };

/** Common practice, no source: neither too little nor too much is driven on, and a cold stick may mislead. */
export function Stick({ level, garage }: StickProps) {
  const words = stickWords(level, garage);
  if (!outsideTheMarks(level)) return words;
  return (
    <>
      <strong>{words}.</strong> Check by the manual’s procedure before the next start.
    </>
  );
}

function stickWords(level: StickProps['level'], garage: GarageView): string {
  const read = `${levelWords(level)}, read ${daysAgo(level.on, garage.today)}`;
  if (level.changedSince) return `${read}; oil changed since`;
  if (level.addedSinceL > 0)
    return `${read}; ${formatVolume(level.addedSinceL, garage.volumeUnit)} added since`;
  return read;
}
