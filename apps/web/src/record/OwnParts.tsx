'use client';

import type { LastValues } from '@quartermark/api/client';
import type { EntryInput, EntryKind } from '@quartermark/engine/log';
import { AnswerParts } from './kinds/answer/AnswerParts.tsx';
import { DriveParts } from './kinds/drive/DriveParts.tsx';
import { FindingParts } from './kinds/finding/FindingParts.tsx';
import { FitParts } from './kinds/fit/FitParts.tsx';
import { FluidParts } from './kinds/fluid/FluidParts.tsx';
import { FuelParts } from './kinds/fuel/FuelParts.tsx';
import { HandoverParts } from './kinds/handover/HandoverParts.tsx';
import { IncidentParts } from './kinds/incident/IncidentParts.tsx';
import { InspectionParts } from './kinds/inspection/InspectionParts.tsx';
import { LabReportParts } from './kinds/lab-report/LabReportParts.tsx';
import { LayUpParts } from './kinds/lay-up/LayUpParts.tsx';
import { MeasureParts } from './kinds/measure/MeasureParts.tsx';
import { MeterReplacedParts } from './kinds/meter-replaced/MeterReplacedParts.tsx';
import { NoteParts } from './kinds/note/NoteParts.tsx';
import { OdometerParts } from './kinds/odometer/OdometerParts.tsx';
import { OilChangeParts } from './kinds/oil-change/OilChangeParts.tsx';
import { OilCheckLevel } from './kinds/oil-check/OilCheckParts.tsx';
import { OilTopUpParts } from './kinds/oil-top-up/OilTopUpParts.tsx';
import { RepairParts } from './kinds/repair/RepairParts.tsx';
import { ServiceParts } from './kinds/service/ServiceParts.tsx';
import { SessionParts } from './kinds/session/SessionParts.tsx';
import { StripParts } from './kinds/strip/StripParts.tsx';
import { WakeUpParts } from './kinds/wake-up/WakeUpParts.tsx';
import { WheelsParts } from './kinds/wheels/WheelsParts.tsx';
import type { AboutProps } from './parts.ts';
import { Odometer } from './WhenParts.tsx';

type OwnPartsProps = AboutProps & {
  kind: EntryKind;
  last: LastValues | null;
  /** the entry that is amended */
  base: EntryInput | null;
};

/** The fields that are a kind's own, and the odometer beside them. */
export function OwnParts({ kind, last, base, ...rows }: OwnPartsProps) {
  const odometer = <Odometer {...rows} kind={kind} last={last?.odometer ?? null} />;
  return (
    <>
      {kind === 'odometer' ? odometer : null}
      <Own {...rows} kind={kind} base={base} />
      {showsOdometer(kind, base) ? odometer : null}
    </>
  );
}

/** Not beside the exchange of the instrument itself, which has two of its own, nor where there is no car. */
function showsOdometer(kind: EntryKind, base: EntryInput | null): boolean {
  if (kind === 'odometer') return false;
  return base?.odometer !== undefined || (kind !== 'meterReplaced' && kind !== 'answer');
}

function Own({ kind, base, about, ...rows }: Omit<OwnPartsProps, 'last'>) {
  switch (kind) {
    case 'oilCheck':
      // a new one is a press on its mark
      return base === null ? null : <OilCheckLevel {...rows} base={base} />;
    case 'oilTopUp':
      return <OilTopUpParts {...rows} base={base} />;
    case 'oilChange':
      return <OilChangeParts {...rows} base={base} />;
    case 'session':
      return <SessionParts {...rows} about={about} />;
    case 'drive':
      return <DriveParts {...rows} />;
    case 'strip':
      return <StripParts {...rows} />;
    case 'fuel':
      return <FuelParts {...rows} />;
    case 'odometer':
      return <OdometerParts {...rows} />;
    case 'fluid':
      return <FluidParts {...rows} />;
    case 'service':
      return <ServiceParts {...rows} about={about} />;
    case 'inspection':
      return <InspectionParts {...rows} />;
    case 'measure':
      return <MeasureParts {...rows} about={about} />;
    case 'fit':
      return <FitParts {...rows} about={about} />;
    case 'wheels':
      return <WheelsParts {...rows} />;
    case 'finding':
      return <FindingParts {...rows} />;
    case 'incident':
      return <IncidentParts {...rows} />;
    case 'layUp':
      return <LayUpParts {...rows} />;
    case 'wakeUp':
      return <WakeUpParts {...rows} about={about} />;
    case 'meterReplaced':
      return <MeterReplacedParts {...rows} />;
    case 'repair':
      return <RepairParts {...rows} />;
    case 'labReport':
      return <LabReportParts {...rows} />;
    case 'handover':
      return <HandoverParts {...rows} />;
    case 'answer':
      return <AnswerParts {...rows} about={about} />;
    case 'note':
      return <NoteParts {...rows} />;
  }
}
