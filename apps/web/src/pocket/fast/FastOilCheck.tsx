'use client';

import { Cautions } from '../../record/Cautions.tsx';
import { cautionsFor } from '../../record/cautions.ts';
import { ZonePress } from '../../record/Zones.tsx';
import { levelOf } from '../../record/zones.ts';
import type { FastProps } from './begin.ts';

/** The seven marks of the stick; one press saves. */
export function FastOilCheck({ car, begin, save, busy }: FastProps) {
  return (
    <>
      <Cautions of={cautionsFor('oilCheck', car.view.car.profile)} />
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
