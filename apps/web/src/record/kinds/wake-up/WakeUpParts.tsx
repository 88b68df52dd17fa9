'use client';

import { Controller } from 'react-hook-form';
import type { AboutProps } from '../../parts.ts';
import { lineWords, type StorageLine, sameLine } from '../../storage-lines.ts';
import { Ticks } from '../../Ticks.tsx';

/** What was done at lay-up, to be undone; each is ticked by hand, and what is not stays open. */
export function WakeUpParts({ form, about }: AboutProps) {
  return (
    <Controller
      control={form.control}
      name="wakeUp.lines"
      render={({ field: { value, onChange } }) => {
        const lines = withoutTwins([...about.wakeSteps, ...value]);
        return (
          <Ticks
            legend="Undone, seen with your own eyes"
            hint="Tick each as you do it. What stays unticked stays open, and the car is held for it."
            none="Nothing that was done for storage is open on record. Look the car over all the same: battery, tyres, plugs, covers."
            rows={lines.map((line) => ({ id: lineWords(line), words: lineWords(line) }))}
            done={value.map(lineWords)}
            onChange={(done) =>
              onChange(
                done.flatMap((words) => lines.find((line) => lineWords(line) === words) ?? []),
              )
            }
          />
        );
      }}
    />
  );
}

function withoutTwins(lines: readonly StorageLine[]): StorageLine[] {
  return lines
    .map(({ what, how }) => ({ what, how }))
    .filter((line, at, all) => all.findIndex((other) => sameLine(line, other)) === at);
}
