import type { Refusal } from '@quartermark/api/client';
import { BothVersions, type VersionRow } from './BothVersions.tsx';

type TwoVersionsProps = {
  rows: readonly VersionRow[];
  conflict: NonNullable<Refusal['conflict']>;
  /** in which the moment is told */
  zone: string;
  /** the command that was refused */
  change: { busy: boolean; clear: () => void };
  /** fills the form with the newest version */
  onNewest: () => void;
  /** lets what stands in the form rest on the newest revision */
  onRest: () => void;
  /** saves what stands in the form on top of the newest version */
  onSave: () => Promise<void>;
};

/** `BothVersions` for a form that holds the revision it rests on: what each way out does to it. */
export function TwoVersions({ rows, conflict, zone, change, ...form }: TwoVersionsProps) {
  return (
    <BothVersions
      rows={rows}
      newest={conflict}
      zone={zone}
      busy={change.busy}
      onNewest={() => {
        form.onNewest();
        change.clear();
      }}
      onMine={() => {
        form.onRest();
        return form.onSave();
      }}
      onEdit={() => {
        form.onRest();
        change.clear();
      }}
    />
  );
}
