'use client';

import { useId } from 'react';
import { TextField, type TextFieldProps } from '../components/TextField.tsx';

/** A time zone by its name in the IANA database; the browser proposes those it knows. */
export function ZoneField(props: Omit<TextFieldProps, 'list' | 'type'>) {
  const list = useId();
  return (
    <>
      <TextField {...props} list={list} autoComplete="off" spellCheck={false} />
      <datalist id={list}>
        {Intl.supportedValuesOf('timeZone').map((zone) => (
          <option key={zone} value={zone} />
        ))}
      </datalist>
    </>
  );
}
