'use client';

import { type EntryInput, entryInput } from '@quartermark/engine/log';
import type { Trouble } from '../client/refusal-words.ts';
import { Button, Notice } from '../components/index.ts';
import { BothVersions } from '../forms/BothVersions.tsx';
import type { About } from './about.ts';
import { bothRows } from './entry-rows.ts';

type MeanwhileProps = {
  trouble: Trouble;
  about: About;
  /** what stands in the form; null where it cannot be read */
  mine: () => EntryInput | null;
  busy: boolean;
  onNewest: (newest: EntryInput, revision: number) => void;
  onMine: (newest: EntryInput, revision: number) => Promise<void>;
  onEdit: (revision: number) => void;
  onAsNew: () => Promise<void>;
};

/** Somebody else changed or removed the entry meanwhile: both are shown, and the person decides. */
export function Meanwhile({ trouble, about, mine, busy, ...ways }: MeanwhileProps) {
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
      rows={bothRows(own, newest, about.items)}
      newest={conflict}
      zone={about.garage.zone}
      busy={busy}
      onNewest={() => ways.onNewest(newest, revision)}
      onMine={() => ways.onMine(newest, revision)}
      onEdit={() => ways.onEdit(revision)}
    />
  );
}
