'use client';

import type { FormEvent, ReactNode } from 'react';
import type { Trouble } from '../client/refusal-words.ts';
import { useAlive } from '../client/use-alive.ts';
import { Notice } from '../components/index.ts';
import styles from './Form.module.css';
import { namedMessage } from './field-words.ts';

type FormProps = {
  /** what `handleSubmit` of react-hook-form gives */
  onSubmit: (event: FormEvent<HTMLFormElement>) => void | Promise<void>;
  /** fields, in `FormSection`s or alone */
  children: ReactNode;
  /** what concerns the whole form; field errors stand beside their fields */
  trouble: Trouble | null;
  /** the submit button first */
  actions: ReactNode;
  label?: string;
};

/**
 * The frame of every form: fields, then what is wrong with the whole, then the buttons. It takes nothing
 * before the page is alive, so that no letter typed early is lost.
 */
export function Form({ onSubmit, children, trouble, actions, label }: FormProps) {
  const alive = useAlive();
  return (
    <form onSubmit={(event) => void onSubmit(event)} noValidate aria-label={label}>
      <fieldset disabled={!alive} className={styles.form}>
        {children}
        {trouble ? <FormTrouble trouble={trouble} /> : null}
        <div className={styles.actions}>{actions}</div>
      </fieldset>
    </form>
  );
}

function FormTrouble({ trouble }: { trouble: Trouble }) {
  if (trouble.place !== 'field') return <Notice tone="alarm">{trouble.message}</Notice>;
  const count = Object.keys(trouble.fields).length;
  return (
    <Notice tone="alarm">
      <p>
        {count === 1 ? 'One field needs a change' : `${count} fields need a change`} before this can
        be saved:
      </p>
      <ul>
        {Object.entries(trouble.fields).map(([field, message]) => (
          <li key={field}>{namedMessage(field, message)}</li>
        ))}
      </ul>
    </Notice>
  );
}

/** A group of fields under a heading and a rule. */
export function FormSection({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section className={styles.section}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}

/** Two fields beside each other where there is room. */
export function FormPair({ children }: { children: ReactNode }) {
  return <div className={styles.pair}>{children}</div>;
}
