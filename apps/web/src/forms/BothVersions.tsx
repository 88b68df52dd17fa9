import type { ReactNode } from 'react';
import { joinClasses, Notice } from '../components/index.ts';
import styles from './BothVersions.module.css';

export type VersionRow = { label: string; mine: string; newest: string };

type BothVersionsProps = {
  rows: readonly VersionRow[];
  /** who wrote the newest, and when, in words */
  newestOf: string;
  /** the ways out: keep the newest, send mine, go on editing */
  actions: ReactNode;
};

/** What was typed beside what somebody else saved meanwhile; where they differ is marked in words. */
export function BothVersions({ rows, newestOf, actions }: BothVersionsProps) {
  return (
    <Notice
      tone="alarm"
      title="Not saved: somebody saved another version since you opened this."
      actions={actions}
    >
      <table className={styles.versions}>
        <thead>
          <tr>
            <th scope="col">Yours, not saved</th>
            <th scope="col">Newest, {newestOf}</th>
          </tr>
        </thead>
        {rows.map(({ label, mine, newest }) => {
          const differs = mine !== newest;
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
                <td>{newest}</td>
              </tr>
            </tbody>
          );
        })}
      </table>
    </Notice>
  );
}
