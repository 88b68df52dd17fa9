'use client';

import { cautionsFor } from '../../record/cautions.ts';
import { ZonePress } from '../../record/Zones.tsx';
import { levelOf } from '../../record/zones.ts';
import type { FastProps } from './begin.ts';
import { ShortCautions } from './ShortCautions.tsx';

/** The seven marks of the stick; one press saves. */
export function FastOilCheck({ car, begin, save, busy }: FastProps) {
  return (
    <>
      <ShortCautions of={cautionsFor('oilCheck', car.view.car.profile)} />
      <ZonePress
        busy={busy}
        onPress={(zone) => {
          const level = levelOf(zone, undefined);
          if (level) void save({ kind: 'oilCheck', ...begin(), level });
        }}
      />
    </>
  );
}
