import type { EntryOf } from '@quartermark/engine/log';
import { ALL_CORNERS, type Corner } from '../../corners.ts';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, type Reading, text } from '../../typed.ts';

export type FindingFields = {
  what: string;
  corner: Corner | 'elsewhere' | '';
  /** in words, if it is at no corner */
  place: string;
  severity: EntryOf<'finding'>['severity'] | '';
  dueBy: string;
};

export const emptyFinding = (): FindingFields => ({
  what: '',
  corner: '',
  place: '',
  severity: '',
  dueBy: '',
});

export function findingFields({ what, where, severity, dueBy }: EntryOf<'finding'>): FindingFields {
  const corner = ALL_CORNERS.find((one) => one === where);
  return {
    what,
    corner: corner ?? (where === undefined ? '' : 'elsewhere'),
    place: corner ? '' : (where ?? ''),
    severity,
    dueBy: dueBy ?? '',
  };
}

export function readFinding({ finding }: RecordFields, { problems }: Reading): Members {
  const what = text(finding.what);
  if (!what) problems.what = 'Say what was found.';
  if (finding.severity === '') problems.severity = 'Say how bad it is.';
  return {
    what,
    where: finding.corner === 'elsewhere' ? text(finding.place) : text(finding.corner),
    severity: text(finding.severity),
    dueBy: text(finding.dueBy),
  };
}
