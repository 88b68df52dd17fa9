'use client';

import { entryLine } from '@quartermark/engine/display';
import { dayWords } from '../../record/day-words.ts';
import styles from '../Pocket.module.css';
import type { EntryCommand } from '../queue/command.ts';
import type { SheetCar } from '../sheet/pocket-sheet.ts';
import { WaitingThing } from './WaitingThing.tsx';
import { WaysOut } from './WaysOut.tsx';

type WaitingEntryProps = {
  command: EntryCommand;
  car: SheetCar | null;
  onMend: (command: EntryCommand) => void;
};

const DOES: Readonly<Record<EntryCommand['verb'], string>> = {
  'entry.record': '',
  'entry.amend': 'Amended: ',
  'entry.remove': 'Removed: ',
};

/** An entry that waits: what it says, why it still waits, and what can be done about it. */
export function WaitingEntry({ command, car, onMend }: WaitingEntryProps) {
  const { entry } = command.input;
  const { title, detail } = entryLine(entry, car?.view.items ?? []);
  const photos = (entry.photos ?? []).length > 0;
  return (
    <WaitingThing
      command={command}
      lost={photos ? 'Its photos go with it.' : 'It cannot be brought back.'}
      waysOut={(acting) => <WaysOut {...{ command, car, onMend, ...acting }} />}
    >
      <p>
        <strong>
          {DOES[command.verb]}
          {title}
        </strong>
        {detail === '' ? '' : `, ${detail}`}
      </p>
      {entry.note === undefined ? null : <p>{entry.note}</p>}
      <p className={styles.small}>
        {[car?.view.car.name, dayWords(entry)].filter(Boolean).join(', ')}
      </p>
    </WaitingThing>
  );
}
