import { formatDay } from '@quartermark/engine/display';
import type { LayUpWindow } from '@quartermark/engine/log';
import { StateWord } from '../components/index.ts';

type LayUpsProps = { windows: readonly LayUpWindow[]; today: string };

/** When the car was, is or will be laid up, the newest first. */
export function LayUps({ windows, today }: LayUpsProps) {
  const newestFirst = [...windows].sort((a, b) => (a.start < b.start ? 1 : -1));
  return (
    <ul>
      {newestFirst.map((window) => (
        <li key={window.id}>
          {covers(window, today) ? (
            <StateWord kind="laidUp" words="Laid up" detail={spanWords(window)} />
          ) : (
            spanWords(window)
          )}
        </li>
      ))}
    </ul>
  );
}

function covers({ start, end }: LayUpWindow, day: string): boolean {
  return start <= day && (end === undefined || day <= end);
}

function spanWords({ start, end }: LayUpWindow): string {
  const from = formatDay(start);
  return end === undefined ? `since ${from}, no end said` : `${from} to ${formatDay(end)}`;
}
