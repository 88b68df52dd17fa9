'use client';

import type { CarView } from '@quartermark/api/client';
import { type EntryInput, entryInput } from '@quartermark/engine/log';
import type { Trouble } from '../client/refusal-words.ts';
import { Button, Notice } from '../components/index.ts';
import { BothVersions } from '../forms/BothVersions.tsx';
import { bothRows } from './entry-rows.ts';

/** Whether a refusal says that somebody else was quicker. */
export function isMeanwhile(trouble: Trouble | null): boolean {
  const code = trouble?.refusal?.code;
  return code === 'conflict' || code === 'removed';
}

type MeanwhileProps = {
  trouble: Trouble;
  view: CarView;
  /** what stands in the form; null where it cannot be read */
  mine: () => EntryInput | null;
  busy: boolean;
  onNewest: (newest: EntryInput, revision: number) => void;
  onMine: (newest: EntryInput, revision: number) => Promise<void>;
  onEdit: (revision: number) => void;
  onAsNew: () => Promise<void>;
};

/** Somebody else changed or removed the entry meanwhile: both are shown, and the person decides. */
export function Meanwhile({ trouble, view, mine, busy, ...ways }: MeanwhileProps) {
  const { refusal } = trouble;
  if (refusal?.code === 'removed')
    return (
      <Notice
        tone="alarm"
        title="Not saved: this entry was removed meanwhile."
        actions={
          <Button busy={busy} onClick={ways.onAsNew}>
            Record it as a new entry
          </Button>
        }
      >
        It stays removed, and what you wrote is still in the form.
      </Notice>
    );
  const conflict = refusal?.conflict;
  const newest = conflict ? entryInput.safeParse(conflict.body).data : undefined;
  const own = mine();
  if (!conflict || !newest || !own) return null;
  const { revision } = conflict;
  return (
    <BothVersions
      rows={bothRows(own, newest, view.items)}
      newest={conflict}
      zone={view.garage.zone}
      busy={busy}
      onNewest={() => ways.onNewest(newest, revision)}
      onMine={() => ways.onMine(newest, revision)}
      onEdit={() => ways.onEdit(revision)}
    />
  );
}
