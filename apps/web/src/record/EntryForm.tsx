'use client';

import type { CarView, LastValues } from '@quartermark/api/client';
import type { EntryInput } from '@quartermark/engine/log';
import { useEffect, useState } from 'react';
import { type UseFormReturn, useForm, useWatch } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import { Cautions } from './Cautions.tsx';
import { cautionsFor } from './cautions.ts';
import { isMeanwhile, Meanwhile } from './Meanwhile.tsx';
import { HowRead } from './OilParts.tsx';
import { OwnParts } from './OwnParts.tsx';
import { Questions, questionOf } from './Questions.tsx';
import { readRecord, type Writes } from './read-record.ts';
import { fieldsOf, type RecordFields, type Start } from './record-fields.ts';
import type { FormKind } from './record-kinds.ts';
import { SameAsLast } from './SameAsLast.tsx';
import { useSaveEntry } from './use-save-entry.ts';
import { When } from './WhenParts.tsx';
import { ZonePress } from './Zones.tsx';

type EntryFormProps = {
  view: CarView;
  kind: FormKind;
  /** the entry that is amended; null for a new one */
  base: EntryInput | null;
  start: Start;
  initial: RecordFields;
  /** where what was typed is kept until it is saved */
  draft: string;
  last: LastValues | null;
  /** ticked from the start */
  itemId?: string | null;
  /** once it is saved */
  onDone: () => void;
  /** away without saving */
  onLeave: () => void;
};

/** The form of an entry, the same for a new one and for an amendment. */
export function EntryForm(props: EntryFormProps) {
  const { view, start, initial, draft, last, itemId = null, onDone, onLeave } = props;
  const [base, setBase] = useState(props.base);
  const kind = props.kind;
  const writes: Writes = {
    base,
    fresh: { kind, car: view.carId, zone: view.garage.zone },
  };
  const form = useForm<RecordFields>({ defaultValues: initial });
  const forget = useDraft(draft, form);
  useTicked(form, itemId);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, (fields) => readRecord(fields, writes));
  const saving = useSaveEntry({ view, forget, onDone });
  const trouble = wrong ?? saving.trouble;
  const question = questionOf(trouble);

  /** @param standing what an amendment is put on top of, to go back to */
  async function save(standing: EntryInput | null, asWritten = false) {
    const fields = form.getValues();
    const read = readRecord(fields, writes);
    setAsked(true);
    if ('problems' in read) return saving.clear();
    if (asWritten && question) saving.answer(question, read.entry);
    const { baseRevision } = fields;
    await saving.save(read.entry, standing && { standing, baseRevision });
  }

  async function asNew() {
    const read = readRecord(form.getValues(), writes);
    if ('entry' in read) await saving.save({ ...read.entry, id: newId() }, null);
  }

  const mine = () => {
    const read = readRecord(form.getValues(), writes);
    return 'entry' in read ? read.entry : null;
  };

  const special = question !== null || isMeanwhile(saving.trouble);
  const errors = question ? {} : (trouble?.fields ?? {});
  const rows = { form, errors };
  const press = kind === 'oilCheck' && base === null;
  return (
    <Form
      label={base === null ? 'What happened' : 'Amend the entry'}
      onSubmit={form.handleSubmit(() => save(base))}
      trouble={special && wrong === null ? null : trouble}
      actions={
        <>
          {press ? null : (
            <Button type="submit" look="main" busy={saving.busy} busyWords="Saving …">
              Save
            </Button>
          )}
          <Button
            onClick={() => {
              forget();
              onLeave();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      <Cared form={form} kind={kind} view={view} />
      {press ? (
        <ZonePress
          busy={saving.busy}
          onPress={(zone) => {
            form.setValue('oilCheck.level', zone);
            void save(null);
          }}
        />
      ) : null}
      {base === null && last ? <SameAsLast {...{ form, kind, last, start, view, writes }} /> : null}
      <OwnParts {...rows} kind={kind} view={view} last={last} base={base} />
      {kind === 'oilCheck' ? <HowRead {...rows} /> : null}
      <When {...rows} kind={kind} today={start.today} unfolded={base !== null} />
      {wrong === null && trouble && question ? (
        <Questions
          trouble={trouble}
          question={question}
          kind={kind}
          busy={saving.busy}
          onAsWritten={() => save(base, true)}
          onOrder={(order) => {
            form.setValue('dayOrder', order);
            return save(base);
          }}
        />
      ) : null}
      {wrong === null && saving.trouble ? (
        <Meanwhile
          trouble={saving.trouble}
          view={view}
          mine={mine}
          busy={saving.busy}
          onNewest={(newest, revision) => {
            setBase(newest);
            form.reset(fieldsOf(newest, revision, start));
            saving.clear();
          }}
          onMine={(newest, revision) => {
            form.setValue('baseRevision', revision);
            return save(newest);
          }}
          onEdit={(revision) => {
            form.setValue('baseRevision', revision);
            saving.clear();
          }}
          onAsNew={asNew}
        />
      ) : null}
    </Form>
  );
}

/** Ticks the item that the address names, a kept draft notwithstanding. */
function useTicked(form: UseFormReturn<RecordFields>, itemId: string | null): void {
  useEffect(() => {
    if (itemId === null) return;
    const done = form.getValues('service.items');
    if (!done.includes(itemId)) form.setValue('service.items', [...done, itemId]);
  }, [form, itemId]);
}

type CaredProps = { form: UseFormReturn<RecordFields>; kind: FormKind; view: CarView };

function Cared({ form, kind, view }: CaredProps) {
  const done = useWatch({ control: form.control, name: 'service.items' });
  const names = view.items.filter(({ id }) => done.includes(id)).map(({ item }) => item.name);
  return <Cautions of={cautionsFor(kind, view.car.profile, names)} />;
}
