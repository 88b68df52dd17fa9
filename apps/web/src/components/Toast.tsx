'use client';

import { Toast as Base } from '@base-ui/react/toast';
import { type ReactNode, useCallback } from 'react';
import styles from './Toast.module.css';

export type ToastOptions = {
  /** what happened, one sentence */
  words: string;
  /** a second line */
  detail?: string;
  /** the way back; the toast then stays until it is pressed or closed */
  undo?: { words?: string; run: () => void };
  /** `alarm` is read out at once and stays */
  tone?: 'plain' | 'alarm';
  /** a toast of the same id is replaced */
  id?: string;
};

const PLAIN_MS = 6000;

/** Shows a line at the foot of the screen: `const toast = useToast(); toast({words: 'Saved.'})`. */
export function useToast(): (options: ToastOptions) => string {
  const { add, close } = Base.useToastManager();
  return useCallback(
    ({ words, detail, undo, tone = 'plain', id }) => {
      const stays = undo !== undefined || tone === 'alarm';
      const shown = add({
        ...(id ? { id } : {}),
        title: words,
        description: detail,
        type: tone,
        priority: tone === 'alarm' ? 'high' : 'low',
        timeout: stays ? 0 : PLAIN_MS,
        ...(undo
          ? {
              actionProps: {
                children: undo.words ?? 'Undo',
                onClick: () => {
                  close(shown);
                  undo.run();
                },
              },
            }
          : {}),
      });
      return shown;
    },
    [add, close],
  );
}

export function ToastProvider({ children }: { children: ReactNode }) {
  return (
    <Base.Provider limit={2}>
      {children}
      <Base.Portal>
        <Base.Viewport className={styles.viewport}>
          <ToastList />
        </Base.Viewport>
      </Base.Portal>
    </Base.Provider>
  );
}

function ToastList() {
  const { toasts } = Base.useToastManager();
  return toasts.map((toast) => (
    <Base.Root key={toast.id} toast={toast} className={styles.toast}>
      <div className={styles.words}>
        <Base.Title className={styles.title} />
        <Base.Description className={styles.detail} />
      </div>
      <Base.Action className={styles.action} />
      <Base.Close className={styles.close}>Close</Base.Close>
    </Base.Root>
  ));
}
