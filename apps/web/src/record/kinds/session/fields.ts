import type { EntryOf } from '@quartermark/engine/log';
import { type CornerFields, cornerFields, emptyCorners, readCorners } from '../../corners.ts';
import type { RecordFields } from '../../record-fields.ts';
import { type Start, usualUnits } from '../../start.ts';
import {
  type Members,
  number,
  quantity,
  type Reading,
  type TypedText,
  text,
  typed,
} from '../../typed.ts';
import { emptyFuel } from '../fuel/fields.ts';

export type SessionFields = {
  use: 'circuit' | 'autocross';
  sessions: number | null;
  distance: TypedText;
  hours: string;
  laps: string;
  venue: string;
  oilTempPeak: TypedText;
  coolantTempPeak: TypedText;
  tyreSet: string;
  pressuresCold: CornerFields;
  pressuresHot: CornerFields;
  fuelUsed: TypedText;
  remarks: string;
  event: string;
};

export function emptySession(start: Start): SessionFields {
  const before = start.last?.session?.kind === 'session' ? start.last.session : null;
  const temperature = { text: '', unit: before?.oilTempPeak?.unit ?? 'c' };
  const [cold] = Object.values(before?.pressuresCold ?? before?.pressuresHot ?? {});
  const pressure = cold?.unit ?? usualUnits(start).pressure;
  return {
    use: before?.use ?? 'circuit',
    sessions: 1,
    distance: { text: '', unit: start.unit },
    hours: '',
    laps: '',
    venue: '',
    oilTempPeak: temperature,
    coolantTempPeak: temperature,
    tyreSet: '',
    pressuresCold: emptyCorners(pressure),
    pressuresHot: emptyCorners(pressure),
    fuelUsed: { text: '', unit: before?.fuelUsed?.unit ?? emptyFuel(start).volume.unit },
    remarks: '',
    event: '',
  };
}

export function sessionFields(entry: EntryOf<'session'>, empty: SessionFields): SessionFields {
  return {
    use: entry.use,
    sessions: entry.sessions,
    distance: entry.distance ?? empty.distance,
    hours: typed(entry.hours),
    laps: typed(entry.laps),
    venue: entry.venue ?? '',
    oilTempPeak: entry.oilTempPeak ?? empty.oilTempPeak,
    coolantTempPeak: entry.coolantTempPeak ?? empty.coolantTempPeak,
    tyreSet: entry.tyreSet ?? '',
    pressuresCold: cornerFields(entry.pressuresCold, empty.pressuresCold),
    pressuresHot: cornerFields(entry.pressuresHot, empty.pressuresHot),
    fuelUsed: entry.fuelUsed ?? empty.fuelUsed,
    remarks: entry.remarks ?? '',
    event: entry.event ?? '',
  };
}

export function readSession({ session }: RecordFields, { problems }: Reading): Members {
  if (session.sessions === null || session.sessions <= 0)
    problems.sessions = 'Say how many sessions; one or more.';
  return {
    use: session.use,
    sessions: session.sessions ?? undefined,
    distance: quantity(session.distance),
    hours: number(session.hours, 'hours', problems),
    laps: number(session.laps, 'laps', problems),
    venue: text(session.venue),
    oilTempPeak: quantity(session.oilTempPeak),
    coolantTempPeak: quantity(session.coolantTempPeak),
    tyreSet: text(session.tyreSet),
    pressuresCold: readCorners(session.pressuresCold),
    pressuresHot: readCorners(session.pressuresHot),
    fuelUsed: quantity(session.fuelUsed),
    remarks: text(session.remarks),
    event: text(session.event),
  };
}
