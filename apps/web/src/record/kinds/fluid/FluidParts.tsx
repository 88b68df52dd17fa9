'use client';

import { type PartProps, VOLUME_UNITS } from '../../parts.ts';
import { Quantity } from '../../Quantity.tsx';
import { ReadyText } from '../../ReadyText.tsx';

const FLUIDS = ['Brake fluid', 'Coolant', 'Gearbox oil', 'Power steering', 'Clutch fluid'];
const LEVELS = ['At MAX', 'Between the marks', 'At MIN', 'Below MIN'];

export function FluidParts({ form, errors }: PartProps) {
  const rows = { form, errors };
  return (
    <>
      <ReadyText
        {...rows}
        name="fluid.which"
        path="which"
        label="The fluid was"
        ready={FLUIDS}
        otherwise="Fluid"
      />
      <ReadyText
        {...rows}
        name="fluid.levelText"
        path="levelText"
        label="It stood"
        ready={LEVELS}
        otherwise="Level"
        optional
      />
      <Quantity
        {...rows}
        name="fluid.added"
        path="added"
        label="Added"
        hint="If its level fell, look for where it went before adding any."
        optional
        units={VOLUME_UNITS}
      />
    </>
  );
}
