'use client';

import { Controller } from 'react-hook-form';
import { Button, DateField, SelectField, TextField } from '../../../components/index.ts';
import { FormPair } from '../../../forms/Form.tsx';
import { errorWithin, type PartProps } from '../../parts.ts';
import { Row, Rows } from '../../Rows.tsx';
import {
  HOW_OPTIONS,
  lineWords,
  READY_LINES,
  type StorageLine,
  sameLine,
} from '../../storage-lines.ts';
import { Ticks } from '../../Ticks.tsx';

export function LayUpParts({ form, errors }: PartProps) {
  return (
    <>
      <Controller
        control={form.control}
        name="layUp.lines"
        render={({ field: { value, onChange } }) => (
          <>
            <ReadyLines lines={value} onChange={onChange} />
            <OwnLines lines={value} onChange={onChange} errors={errors} />
          </>
        )}
      />
      <FormPair>
        <TextField
          label="Keys are at"
          optional
          autoComplete="off"
          error={errors['entry.keysAt']}
          {...form.register('layUp.keysAt')}
        />
        <DateField
          label="Planned until"
          hint="The last day of storage."
          optional
          error={errors['entry.until']}
          {...form.register('layUp.until')}
        />
      </FormPair>
    </>
  );
}

type LinesProps = { lines: readonly StorageLine[]; onChange: (lines: StorageLine[]) => void };

const isReady = (line: StorageLine) => READY_LINES.some((ready) => sameLine(ready, line));

function ReadyLines({ lines, onChange }: LinesProps) {
  const words = lines.filter(isReady).map(lineWords);
  return (
    <Ticks
      legend="What was done"
      hint="Each is asked for when the car wakes, so that nothing stays plugged or disconnected."
      rows={READY_LINES.map((line) => ({ id: lineWords(line), words: lineWords(line) }))}
      done={words}
      onChange={(done) => {
        const kept = lines.filter((line) => !isReady(line) || done.includes(lineWords(line)));
        const added = READY_LINES.filter(
          (line) => done.includes(lineWords(line)) && !words.includes(lineWords(line)),
        );
        onChange([...kept, ...added]);
      }}
    />
  );
}

/** What no ready line says; each stands where it was written. */
function OwnLines({ lines, onChange, errors }: LinesProps & Pick<PartProps, 'errors'>) {
  const change = (at: number, how: Partial<StorageLine>) =>
    onChange(lines.map((line, place) => (place === at ? { ...line, ...how } : line)));
  const own = lines.flatMap((line, at) => (isReady(line) ? [] : [{ line, at }]));
  return (
    <Rows
      legend="Anything else"
      more={
        <Button onClick={() => onChange([...lines, { what: '', how: 'other' }])}>
          Another line
        </Button>
      }
    >
      {own.map(({ line, at }, place) => (
        <Row
          key={at}
          of={`line ${place + 1}`}
          onRemove={() => onChange(lines.filter((_, other) => other !== at))}
        >
          <TextField
            label="What"
            name={`layUp.lines.${at}.what`}
            autoComplete="off"
            value={line.what}
            onChange={(event) => change(at, { what: event.currentTarget.value })}
            error={errorWithin(errors, `lines.${at}`)}
          />
          <SelectField
            label="How"
            name={`layUp.lines.${at}.how`}
            options={HOW_OPTIONS}
            value={line.how}
            onChange={(event) => {
              const chosen = HOW_OPTIONS.find(({ value }) => value === event.currentTarget.value);
              if (chosen) change(at, { how: chosen.value });
            }}
          />
        </Row>
      ))}
    </Rows>
  );
}
