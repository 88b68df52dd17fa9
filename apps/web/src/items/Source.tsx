'use client';

import { type UseFormReturn, useWatch } from 'react-hook-form';
import { Button, TextField } from '../components/index.ts';
import type { ItemFields } from './item-fields.ts';
import styles from './Source.module.css';

const COMMON = ['The maker’s manual', 'Your own value', 'Common practice, no source'] as const;

type SourceProps = { form: UseFormReturn<ItemFields>; error: string | undefined };

/** Whose value the limits are: in free words, the most common ones a press away. */
export function Source({ form, error }: SourceProps) {
  const source = useWatch({ control: form.control, name: 'source' });
  return (
    <div className={styles.source}>
      <TextField
        label="Whose values these are"
        hint="Such as the page of the manual. Left empty, they are shown as unverified."
        optional
        autoComplete="off"
        error={error}
        {...form.register('source')}
      />
      <div className={styles.ready}>
        {COMMON.filter((words) => words !== source).map((words) => (
          <Button
            key={words}
            look="quiet"
            onClick={() => form.setValue('source', words, { shouldDirty: true })}
          >
            {words}
          </Button>
        ))}
      </div>
    </div>
  );
}
