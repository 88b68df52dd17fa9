import type { EntryInput } from '@quartermark/engine/log';
import { type AnswerFields, answerFields, emptyAnswer } from './kinds/answer/fields.ts';
import { type DriveFields, driveFields, emptyDrive } from './kinds/drive/fields.ts';
import { emptyFinding, type FindingFields, findingFields } from './kinds/finding/fields.ts';
import { emptyFit, type FitFields, fitFields } from './kinds/fit/fields.ts';
import { emptyFluid, type FluidFields, fluidFields } from './kinds/fluid/fields.ts';
import { emptyFuel, type FuelFields, fuelFields } from './kinds/fuel/fields.ts';
import { emptyHandover, type HandoverFields, handoverFields } from './kinds/handover/fields.ts';
import { emptyIncident, type IncidentFields, incidentFields } from './kinds/incident/fields.ts';
import {
  emptyInspection,
  type InspectionFields,
  inspectionFields,
} from './kinds/inspection/fields.ts';
import {
  emptyLabReport,
  type LabReportFields,
  labReportFields,
} from './kinds/lab-report/fields.ts';
import { emptyLayUp, type LayUpFields, layUpFields } from './kinds/lay-up/fields.ts';
import { emptyMeasure, type MeasureFields, measureFields } from './kinds/measure/fields.ts';
import {
  emptyMeterReplaced,
  type MeterReplacedFields,
  meterReplacedFields,
} from './kinds/meter-replaced/fields.ts';
import { emptyOdometer, type OdometerFields, odometerFields } from './kinds/odometer/fields.ts';
import {
  emptyOilChange,
  type OilChangeFields,
  oilChangeFields,
} from './kinds/oil-change/fields.ts';
import { emptyOilCheck, type OilCheckFields, oilCheckFields } from './kinds/oil-check/fields.ts';
import { emptyOilTopUp, type OilTopUpFields, oilTopUpFields } from './kinds/oil-top-up/fields.ts';
import { emptyRepair, type RepairFields, repairFields } from './kinds/repair/fields.ts';
import { emptyService, type ServiceFields, serviceFields } from './kinds/service/fields.ts';
import { emptySession, type SessionFields, sessionFields } from './kinds/session/fields.ts';
import { emptyStrip, type StripFields, stripFields } from './kinds/strip/fields.ts';
import { emptyWakeUp, type WakeUpFields, wakeUpFields } from './kinds/wake-up/fields.ts';
import { emptyWheels, type WheelsFields, wheelsFields } from './kinds/wheels/fields.ts';
import type { Start } from './start.ts';
import type { TypedText } from './typed.ts';

/** What the form of every kind holds. */
type CommonFields = {
  /** made once, so that sending again after no answer cannot write it twice */
  entryId: string;
  /** revision the fields were taken from; 0 for a new entry */
  baseRevision: number;
  on: string;
  time: string;
  dayOrder: '' | 'beforeDriving' | 'afterDriving';
  odometer: TypedText;
  driver: string;
  note: string;
  /** ids of photos that lie on the server, or on this device until it takes them */
  photos: string[];
};

/** What is a kind's own. A note has nothing of its own. */
type OwnFields = {
  reading: OdometerFields;
  fuel: FuelFields;
  oilCheck: OilCheckFields;
  oilTopUp: OilTopUpFields;
  oilChange: OilChangeFields;
  fluid: FluidFields;
  drive: DriveFields;
  session: SessionFields;
  strip: StripFields;
  service: ServiceFields;
  inspection: InspectionFields;
  measure: MeasureFields;
  fit: FitFields;
  wheels: WheelsFields;
  finding: FindingFields;
  incident: IncidentFields;
  layUp: LayUpFields;
  wakeUp: WakeUpFields;
  meterReplaced: MeterReplacedFields;
  repair: RepairFields;
  labReport: LabReportFields;
  handover: HandoverFields;
  answer: AnswerFields;
};

/** What a form holds: everything as typed. Only the part of the kind that is written is read. */
export type RecordFields = CommonFields & OwnFields;

/** The fields of a new entry: today, the units last used, everything else not said. */
export function emptyFields(start: Start): RecordFields {
  return { ...emptyCommon(start), ...emptyOwn(start) };
}

function emptyCommon({ entryId, today, unit, last }: Start): CommonFields {
  return {
    entryId,
    baseRevision: 0,
    on: today,
    time: '',
    dayOrder: '',
    odometer: { text: '', unit: last?.odometer?.unit ?? unit },
    driver: '',
    note: '',
    photos: [],
  };
}

function emptyOwn(start: Start): OwnFields {
  return {
    reading: emptyOdometer(),
    fuel: emptyFuel(start),
    oilCheck: emptyOilCheck(),
    oilTopUp: emptyOilTopUp(start),
    oilChange: emptyOilChange(start),
    fluid: emptyFluid(start),
    drive: emptyDrive(start),
    session: emptySession(start),
    strip: emptyStrip(),
    service: emptyService(),
    inspection: emptyInspection(),
    measure: emptyMeasure(start),
    fit: emptyFit(start),
    wheels: emptyWheels(start),
    finding: emptyFinding(),
    incident: emptyIncident(),
    layUp: emptyLayUp(),
    wakeUp: emptyWakeUp(),
    meterReplaced: emptyMeterReplaced(start),
    repair: emptyRepair(),
    labReport: emptyLabReport(),
    handover: emptyHandover(),
    answer: emptyAnswer(start),
  };
}

/** A stored entry as its form shows it, letter for letter. */
export function fieldsOf(entry: EntryInput, revision: number, start: Start): RecordFields {
  const empty = emptyFields(start);
  return {
    ...empty,
    entryId: entry.id,
    baseRevision: revision,
    on: entry.on,
    time: entry.time ?? '',
    dayOrder: entry.dayOrder ?? '',
    odometer: entry.odometer ?? empty.odometer,
    driver: entry.driver ?? '',
    note: entry.note ?? '',
    photos: entry.photos ?? [],
    ...ownFields(entry, empty),
  };
}

/** The part of the entry's own kind. */
export function ownFields(entry: EntryInput, empty: RecordFields): Partial<OwnFields> {
  switch (entry.kind) {
    case 'odometer':
      return { reading: odometerFields(entry) };
    case 'fuel':
      return { fuel: fuelFields(entry) };
    case 'oilCheck':
      return { oilCheck: oilCheckFields(entry) };
    case 'oilTopUp':
      return { oilTopUp: oilTopUpFields(entry, empty.oilTopUp) };
    case 'oilChange':
      return { oilChange: oilChangeFields(entry, empty.oilChange) };
    case 'fluid':
      return { fluid: fluidFields(entry, empty.fluid) };
    case 'drive':
      return { drive: driveFields(entry, empty.drive) };
    case 'session':
      return { session: sessionFields(entry, empty.session) };
    case 'strip':
      return { strip: stripFields(entry) };
    case 'service':
      return { service: serviceFields(entry) };
    case 'inspection':
      return { inspection: inspectionFields(entry) };
    case 'measure':
      return { measure: measureFields(entry, empty.measure) };
    case 'fit':
      return { fit: fitFields(entry) };
    case 'wheels':
      return { wheels: wheelsFields(entry, empty.wheels) };
    case 'finding':
      return { finding: findingFields(entry) };
    case 'incident':
      return { incident: incidentFields(entry) };
    case 'layUp':
      return { layUp: layUpFields(entry) };
    case 'wakeUp':
      return { wakeUp: wakeUpFields(entry) };
    case 'meterReplaced':
      return { meterReplaced: meterReplacedFields(entry, empty.meterReplaced) };
    case 'repair':
      return { repair: repairFields(entry) };
    case 'labReport':
      return { labReport: labReportFields(entry) };
    case 'handover':
      return { handover: handoverFields(entry) };
    case 'answer':
      return { answer: answerFields(entry) };
    case 'note':
      return {};
  }
}
