'use client';

import { Dialog as Base } from '@base-ui/react/dialog';
import type { ReactNode } from 'react';
import styles from './Dialog.module.css';

type DialogProps = {
  open: boolean;
  onOpenChange: (open: boolean) => void;
  title: string;
  description?: ReactNode;
  children?: ReactNode;
  /** buttons, the safest first */
  actions: ReactNode;
};

/** A question that must be answered before going on. Escape and a press outside close it. */
export function Dialog({ open, onOpenChange, title, description, children, actions }: DialogProps) {
  return (
    <Base.Root open={open} onOpenChange={onOpenChange}>
      <Base.Portal>
        <Base.Backdrop className={styles.backdrop} />
        <Base.Popup className={styles.popup}>
          <Base.Title className={styles.title}>{title}</Base.Title>
          {description ? (
            <Base.Description render={<div />} className={styles.description}>
              {description}
            </Base.Description>
          ) : null}
          {children}
          <div className={styles.actions}>{actions}</div>
        </Base.Popup>
      </Base.Portal>
    </Base.Root>
  );
}
