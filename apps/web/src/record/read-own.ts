import type { EntryKind } from '@quartermark/engine/log';
import { readAnswer } from './kinds/answer/fields.ts';
import { readDrive } from './kinds/drive/fields.ts';
import { readFinding } from './kinds/finding/fields.ts';
import { readFit } from './kinds/fit/fields.ts';
import { readFluid } from './kinds/fluid/fields.ts';
import { readFuel } from './kinds/fuel/fields.ts';
import { readHandover } from './kinds/handover/fields.ts';
import { readIncident } from './kinds/incident/fields.ts';
import { readInspection } from './kinds/inspection/fields.ts';
import { readLabReport } from './kinds/lab-report/fields.ts';
import { readLayUp } from './kinds/lay-up/fields.ts';
import { readMeasure } from './kinds/measure/read.ts';
import { readMeterReplaced } from './kinds/meter-replaced/fields.ts';
import { readNote } from './kinds/note/fields.ts';
import { readOdometer } from './kinds/odometer/fields.ts';
import { readOilChange } from './kinds/oil-change/fields.ts';
import { readOilCheck } from './kinds/oil-check/fields.ts';
import { readOilTopUp } from './kinds/oil-top-up/fields.ts';
import { readRepair } from './kinds/repair/fields.ts';
import { readService } from './kinds/service/fields.ts';
import { readSession } from './kinds/session/fields.ts';
import { readStrip } from './kinds/strip/fields.ts';
import { readWakeUp } from './kinds/wake-up/fields.ts';
import { readWheels } from './kinds/wheels/fields.ts';
import type { RecordFields } from './record-fields.ts';
import type { Members, Reading } from './typed.ts';

type Read = (fields: RecordFields, reading: Reading) => Members;

/** Reads the part of a form that is its kind's own. */
export const READ_OWN: Readonly<Record<EntryKind, Read>> = {
  oilCheck: readOilCheck,
  oilTopUp: readOilTopUp,
  oilChange: readOilChange,
  fluid: readFluid,
  fuel: readFuel,
  odometer: readOdometer,
  drive: readDrive,
  session: readSession,
  strip: readStrip,
  service: readService,
  inspection: readInspection,
  measure: readMeasure,
  fit: readFit,
  wheels: readWheels,
  finding: readFinding,
  incident: readIncident,
  layUp: readLayUp,
  wakeUp: readWakeUp,
  meterReplaced: readMeterReplaced,
  repair: readRepair,
  labReport: readLabReport,
  handover: readHandover,
  answer: readAnswer,
  note: readNote,
};
