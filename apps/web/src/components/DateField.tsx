'use client';

import { TextField, type TextFieldProps } from './TextField.tsx';

/** A civil date, `YYYY-MM-DD`, with the browser's own calendar. */
export function DateField(props: Omit<TextFieldProps, 'type' | 'suffix'>) {
  return <TextField {...props} type="date" figures />;
}
