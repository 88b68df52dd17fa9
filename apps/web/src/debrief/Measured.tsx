'use client';

import type { GearRow } from '@quartermark/api/client';
import { useQuery } from '@tanstack/react-query';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { Button, Notice, Skeleton } from '../components/index.ts';
import { Fold } from '../forms/Fold.tsx';
import { ByCorner, CornerReading } from '../record/kinds/measure/ByCorner.tsx';
import { DEPTH_UNITS } from '../record/parts.ts';
import type { Problems } from '../record/typed.ts';
import { type CarDebriefProps, errorsAt } from './car-debrief-props.ts';
import { cornersOf, emptyMeasured, isMeasured, type MeasuredFields } from './debrief-fields.ts';
import { PartFoot } from './PartFoot.tsx';
import { partKey } from './part-key.ts';

/** Pads and tyres that are on the car now, to be measured while it is cold on its stands. */
export function Measured(props: CarDebriefProps) {
  const { page, car, fields, saved, onChange } = props;
  const trpc = useTRPC();
  const where = { garageId: page.garage.id, carId: car.carId };
  const view = useQuery(trpc.car.view.queryOptions(where));
  if (view.isError)
    return (
      <Notice
        tone="alarm"
        title="What is on the car could not be fetched."
        actions={<Button onClick={() => void view.refetch()}>Try again</Button>}
      >
        {refusalWords(view.error).message}
      </Notice>
    );
  if (!view.data) return <Skeleton of="what is on the car" rows={2} />;
  return view.data.gear.flatMap(({ gearId, gear, fittedTo }) => {
    const sort = measuredAs(gear);
    const key = partKey.measure(car.carId, gearId);
    if (sort === null || saved[key] !== undefined) return [];
    const corners = cornersOf(fittedTo?.positions ?? []);
    const measured = fields.measured[gearId] ?? emptyMeasured(sort, corners);
    const errors = errorsAt(props, key);
    return (
      <Fold
        key={gearId}
        title={`Measure ${gear.name}`}
        now={isMeasured(measured) ? 'filled in' : undefined}
        wrong={Object.keys(errors).length > 0}
      >
        <PartRows
          sort={sort}
          measured={measured}
          errors={errors}
          onChange={(changed) =>
            onChange({ measured: { ...fields.measured, [gearId]: { ...measured, ...changed } } })
          }
        />
        <PartFoot {...props} partKey={key} />
      </Fold>
    );
  });
}

function measuredAs(gear: GearRow['gear']): 'pads' | 'tyres' | null {
  if (gear.kind !== 'component') return null;
  if (gear.sort === 'pads') return 'pads';
  return gear.sort === 'tyreSet' || gear.sort === 'wheelSet' ? 'tyres' : null;
}

type PartRowsProps = {
  sort: 'pads' | 'tyres';
  measured: MeasuredFields;
  errors: Problems;
  onChange: (changed: Partial<MeasuredFields>) => void;
};

function PartRows(props: PartRowsProps) {
  return props.sort === 'pads' ? <PadRows {...props} /> : <TreadRows {...props} />;
}

const SIDES = [
  { side: 'inner', words: 'Inner' },
  { side: 'outer', words: 'Outer' },
] as const;

function PadRows({ measured: { pads }, errors, onChange }: PartRowsProps) {
  return (
    <ByCorner
      rows={pads}
      of="Brake pads"
      units={DEPTH_UNITS}
      unit={pads[0]?.inner.unit ?? 'mm'}
      onUnit={(unit) =>
        onChange({
          pads: pads.map((row) => ({
            ...row,
            inner: { ...row.inner, unit },
            outer: { ...row.outer, unit },
          })),
        })
      }
    >
      {(row, at) =>
        SIDES.map(({ side, words }) => (
          <CornerReading
            key={side}
            label={words}
            path={`pads.${at}.${side}`}
            errors={errors}
            units={DEPTH_UNITS}
            value={row[side]}
            onChange={(read) =>
              onChange({
                pads: pads.map((one, place) => (place === at ? { ...one, [side]: read } : one)),
              })
            }
          />
        ))
      }
    </ByCorner>
  );
}

const GROOVE_WORDS: Readonly<Record<string, string>> = {
  outer: 'Outer',
  middle: 'Middle',
  inner: 'Inner',
};

function TreadRows({ measured: { tread }, errors, onChange }: PartRowsProps) {
  return (
    <ByCorner
      rows={tread}
      of="Tread"
      units={DEPTH_UNITS}
      unit={tread[0]?.depth.unit ?? 'mm'}
      onUnit={(unit) =>
        onChange({ tread: tread.map((row) => ({ ...row, depth: { ...row.depth, unit } })) })
      }
    >
      {(row, at) => (
        <CornerReading
          key={row.groove}
          label={GROOVE_WORDS[row.groove] ?? row.groove}
          path={`tread.${at}.depth`}
          errors={errors}
          units={DEPTH_UNITS}
          value={row.depth}
          onChange={(depth) =>
            onChange({
              tread: tread.map((one, place) => (place === at ? { ...one, depth } : one)),
            })
          }
        />
      )}
    </ByCorner>
  );
}
