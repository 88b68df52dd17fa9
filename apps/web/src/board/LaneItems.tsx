'use client';

import type { OverviewRow } from '@quartermark/api/client';
import type { Lane, LaneItem } from '@quartermark/engine/display';
import { useId, useState } from 'react';
import { Button } from '../components/index.ts';
import { AllItems } from './AllItems.tsx';
import styles from './Board.module.css';
import { LaneLine } from './LaneLine.tsx';
import type { Season } from './season.ts';
import { leftOut, mayHoldMore, shownAtFirst } from './shown-items.ts';

type LaneItemsProps = { row: OverviewRow; lane: Lane; season: Season };

/**
 * What runs out first on a car, a line each, and all of it once somebody opens the lane. Where there is room
 * for the board each stands at its date; what has none is said in words. On a phone they are a list.
 */
export function LaneItems({ row, lane, season }: LaneItemsProps) {
  const [open, setOpen] = useState(false);
  const id = useId();
  if (lane.next.length === 0) return <p className={styles.none}>Nothing is watched yet.</p>;
  const shown = shownAtFirst(lane.next, row.carId, season.events);
  const more = leftOut(shown, row);
  const line = (item: LaneItem) => (
    <LaneLine key={item.id} item={item} row={row} lane={lane} season={season} />
  );
  const first = <ol className={styles.items}>{shown.map(line)}</ol>;
  const opens = mayHoldMore(lane, shown.length, more);
  return (
    <>
      <div id={id}>
        {open ? (
          <AllItems row={row} garageId={season.garageId} meanwhile={first} line={line} />
        ) : (
          first
        )}
      </div>
      {opens ? (
        <p className={styles.foot}>
          {more > 0 && !open ? (
            <span>
              and {more} more {more === 1 ? 'that asks' : 'that ask'} for something
            </span>
          ) : null}
          <Button
            look="quiet"
            className={styles.opens}
            aria-expanded={open}
            aria-controls={id}
            aria-label={`${open ? 'Show less' : 'Show all'}: ${row.name}`}
            onClick={() => setOpen(!open)}
          >
            {open ? 'Show less' : 'Show all'}
          </Button>
        </p>
      ) : null}
    </>
  );
}
