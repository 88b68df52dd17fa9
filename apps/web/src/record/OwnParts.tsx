'use client';

import type { CarView, LastValues } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';
import { OilChangeParts, OilCheckLevel, OilTopUpParts } from './OilParts.tsx';
import { FuelParts, NoteParts, OdometerParts } from './OtherParts.tsx';
import type { PartProps } from './parts.ts';
import type { FormKind } from './record-kinds.ts';
import { ServiceParts } from './ServiceParts.tsx';
import { DriveParts, SessionParts, StripParts } from './UseParts.tsx';
import { Odometer } from './WhenParts.tsx';

type OwnPartsProps = PartProps & {
  kind: FormKind;
  view: CarView;
  last: LastValues | null;
  /** the entry that is amended */
  base: EntryInput | null;
};

/** The fields that are a kind's own, and the odometer beside them. */
export function OwnParts({ kind, view, last, base, ...rows }: OwnPartsProps) {
  const odometer = <Odometer {...rows} kind={kind} last={last?.odometer ?? null} />;
  return (
    <>
      {kind === 'odometer' ? odometer : null}
      <Own {...rows} kind={kind} view={view} base={base} />
      {kind === 'odometer' ? null : odometer}
    </>
  );
}

function Own({ kind, view, base, ...rows }: Omit<OwnPartsProps, 'last'>) {
  switch (kind) {
    case 'oilCheck':
      // a new one is a press on its mark
      return base === null ? null : <OilCheckLevel {...rows} base={base} />;
    case 'oilTopUp':
      return <OilTopUpParts {...rows} base={base} />;
    case 'oilChange':
      return <OilChangeParts {...rows} base={base} />;
    case 'session':
      return <SessionParts {...rows} />;
    case 'drive':
      return <DriveParts {...rows} />;
    case 'strip':
      return <StripParts {...rows} />;
    case 'fuel':
      return <FuelParts {...rows} />;
    case 'odometer':
      return <OdometerParts {...rows} />;
    case 'service':
      return (
        <ServiceParts
          {...rows}
          items={view.items}
          garageHref={`/g/${view.garage.id}`}
          carId={view.carId}
        />
      );
    case 'note':
      return <NoteParts {...rows} />;
    case 'other':
      return null;
  }
}
