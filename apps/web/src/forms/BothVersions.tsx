import { Button, joinClasses, Notice } from '../components/index.ts';
import { momentWords } from '../garage/moment-words.ts';
import styles from './BothVersions.module.css';

export type VersionRow = { label: string; mine: string; newest: string };

type BothVersionsProps = {
  rows: readonly VersionRow[];
  /** who wrote the newest, and when */
  newest: { by: string; at: string };
  /** in which the moment is told */
  zone: string;
  busy: boolean;
  /** lets go of what was typed */
  onNewest: () => void;
  /** saves what was typed on top of the newest */
  onMine: () => Promise<void>;
  /** goes back to what was typed, now resting on the newest */
  onEdit: () => void;
};

/**
 * What was typed beside what somebody else saved meanwhile; where they differ is marked in words. The
 * person chooses one of three ways out.
 */
export function BothVersions({ rows, newest, zone, busy, ...ways }: BothVersionsProps) {
  return (
    <Notice
      tone="alarm"
      title="Not saved: somebody saved another version since you opened this."
      actions={
        <>
          <Button onClick={ways.onNewest}>Keep the newest</Button>
          <Button busy={busy} onClick={ways.onMine}>
            Save mine over it
          </Button>
          <Button onClick={ways.onEdit}>Go on editing mine</Button>
        </>
      }
    >
      <VersionTable rows={rows} newest={newest} zone={zone} />
    </Notice>
  );
}

type VersionTableProps = Pick<BothVersionsProps, 'rows' | 'newest' | 'zone'>;

/** Two versions beside each other, row by row. */
export function VersionTable({ rows, newest, zone }: VersionTableProps) {
  return (
    <table className={styles.versions}>
      <thead>
        <tr>
          <th scope="col">Yours, not saved</th>
          <th scope="col">
            Newest, by {newest.by}, {momentWords(newest.at, zone)}
          </th>
        </tr>
      </thead>
      {rows.map(({ label, mine, newest: theirs }) => {
        const differs = mine !== theirs;
        return (
          <tbody key={label} className={joinClasses(styles.row, differs && styles.differs)}>
            <tr>
              <th scope="rowgroup" colSpan={2}>
                {label}
                {differs ? ' (differs)' : ''}
              </th>
            </tr>
            <tr>
              <td>{mine}</td>
              <td>{theirs}</td>
            </tr>
          </tbody>
        );
      })}
    </table>
  );
}
