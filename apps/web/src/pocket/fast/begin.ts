import type { EntryInput } from '@quartermark/engine/log';
import type { NewPhoto } from '../queue/command.ts';
import type { SheetCar, SheetGarage } from '../sheet/pocket-sheet.ts';

/** What every fast entry begins with: its own id, the garage's day and minute, the car. */
export type Begin = { id: string; on: string; time: string; zone: string; car: string };

/** What each fast screen is given. `save` says by itself what went wrong; the screen stays as it is then. */
export type FastProps = {
  garage: SheetGarage;
  car: SheetCar;
  begin: () => Begin;
  save: (entry: EntryInput, photos?: readonly NewPhoto[]) => Promise<void>;
  busy: boolean;
};

/** An empty text is nothing said. */
export const said = (text: string): string | undefined =>
  text.trim() === '' ? undefined : text.trim();
