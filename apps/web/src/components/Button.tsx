'use client';

import { Button as Base } from '@base-ui/react/button';
import { type ComponentProps, useId } from 'react';
import styles from './Button.module.css';
import { joinClasses } from './join-classes.ts';

export type ButtonProps = Omit<ComponentProps<'button'>, 'disabled' | 'onClick'> & {
  onClick?: () => void | Promise<void>;
  /** `main` once a screen at most; `quiet` looks like a link */
  look?: 'main' | 'plain' | 'quiet';
  /** why it cannot be pressed now, in words; its presence is what disables the button */
  reason?: string | null;
  /** true while the work it started is under way; presses are ignored */
  busy?: boolean;
  /** words while busy */
  busyWords?: string;
};

/** A button. It stays in the tab order when it cannot be pressed, so that its reason can be read. */
export function Button({
  look = 'plain',
  reason = null,
  busy = false,
  busyWords,
  children,
  className,
  onClick,
  ...rest
}: ButtonProps) {
  const reasonId = useId();
  return (
    <span className={styles.frame}>
      <Base
        type="button"
        {...rest}
        onClick={() => void onClick?.()}
        className={joinClasses(styles.button, styles[look], className)}
        disabled={reason !== null || busy}
        focusableWhenDisabled
        aria-busy={busy || undefined}
        aria-describedby={reason ? reasonId : rest['aria-describedby']}
      >
        {busy && busyWords ? busyWords : children}
      </Base>
      {reason ? (
        <span id={reasonId} className={styles.reason}>
          {reason}
        </span>
      ) : null}
    </span>
  );
}
