'use client';

import { Collapsible } from '@base-ui/react/collapsible';
import type { ReactNode } from 'react';
import styles from './Why.module.css';

type WhyProps = {
  /** what is explained, for those who hear the page: "engine oil" reads "Why: engine oil" */
  of: string;
  children: ReactNode;
  words?: string;
  /** what stands in the line of the press, such as links */
  beside?: ReactNode;
};

/** The reasons behind a computed number, opened on demand; they are not in the page before that. */
export function Why({ of, children, words = 'Why', beside }: WhyProps) {
  return (
    <Collapsible.Root>
      <div className={styles.line}>
        <Collapsible.Trigger className={styles.trigger} aria-label={`${words}: ${of}`}>
          {words}
        </Collapsible.Trigger>
        {beside}
      </div>
      <Collapsible.Panel className={styles.panel}>{children}</Collapsible.Panel>
    </Collapsible.Root>
  );
}
