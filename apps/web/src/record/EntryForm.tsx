'use client';

import type { LastValues } from '@quartermark/api/client';
import type { EntryInput, EntryKind } from '@quartermark/engine/log';
import { useEffect, useState } from 'react';
import { type UseFormReturn, useForm } from 'react-hook-form';
import { newId } from '../client/make-id.ts';
import { Button } from '../components/index.ts';
import { Form } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import { useLocalTrouble } from '../forms/use-local-trouble.ts';
import type { About } from './about.ts';
import { questionOf } from './asked.ts';
import { HowRead } from './kinds/oil-check/OilCheckParts.tsx';
import { NotSaved } from './NotSaved.tsx';
import { OilFit } from './OilFit.tsx';
import { OwnParts } from './OwnParts.tsx';
import { PhotoField } from './PhotoField.tsx';
import { readRecord, type Writes } from './read-record.ts';
import { fieldsOf, type RecordFields } from './record-fields.ts';
import { hasPhotos } from './record-kinds.ts';
import { SameAsLast } from './SameAsLast.tsx';
import type { Start } from './start.ts';
import { usePhotos } from './use-photos.ts';
import { useSaveEntry } from './use-save-entry.ts';
import { When } from './WhenParts.tsx';
import { WorkCautions } from './WorkCautions.tsx';
import { ZonePress } from './Zones.tsx';

type EntryFormProps = {
  about: About;
  kind: EntryKind;
  /** the entry that is amended; null for a new one */
  base: EntryInput | null;
  start: Start;
  initial: RecordFields;
  /** where what was typed is kept until it is saved */
  draft: string;
  last: LastValues | null;
  /** items that are ticked from the start */
  ticked?: readonly string[];
  /** once it is saved */
  onDone: () => void;
  /** away without saving */
  onLeave: () => void;
};

/** Always the same list, or the form would be ticked anew at each turn. */
const NONE: readonly string[] = [];

/** The form of an entry, the same for a new one and for an amendment. */
export function EntryForm(props: EntryFormProps) {
  const { about, kind, start, initial, draft, last, ticked = NONE, onDone, onLeave } = props;
  const [base, setBase] = useState(props.base);
  const writes: Writes = { base, fresh: freshOf(kind, about) };
  const form = useForm<RecordFields>({ defaultValues: initial });
  const forget = useDraft(draft, form);
  useTicked(form, ticked);
  const photos = usePhotos(about.garage.id, draft, form);
  const [asked, setAsked] = useState(false);
  const wrong = useLocalTrouble(form, asked, (fields) => readRecord(fields, writes));
  const saving = useSaveEntry({ about, forget, onDone });
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

  const asksItself = wrong === null && saving.asksItself;
  const errors = asksItself ? {} : (trouble?.fields ?? {});
  const rows = { form, errors };
  const press = kind === 'oilCheck' && base === null;
  return (
    <Form
      label={base === null ? 'What happened' : 'Amend the entry'}
      onSubmit={form.handleSubmit(() => (photos.waitsFor === null ? save(base) : undefined))}
      trouble={asksItself ? null : trouble}
      actions={
        <>
          {press ? null : (
            <Button
              type="submit"
              look="main"
              busy={saving.busy}
              busyWords="Saving …"
              reason={photos.waitsFor}
            >
              Save
            </Button>
          )}
          <Button
            onClick={() => {
              forget();
              photos.letGo();
              onLeave();
            }}
          >
            Leave without saving
          </Button>
        </>
      }
    >
      <WorkCautions form={form} kind={kind} about={about} />
      {press ? (
        <ZonePress
          busy={saving.busy}
          onPress={(zone) => {
            form.setValue('oilCheck.level', zone);
            void save(null);
          }}
        />
      ) : null}
      {base === null && last ? (
        <SameAsLast {...{ form, kind, last, start, about, writes }} />
      ) : null}
      <OwnParts {...rows} kind={kind} about={about} last={last} base={base} />
      {kind === 'oilTopUp' || kind === 'oilChange' ? (
        <OilFit form={form} of={kind} profile={about.profile} />
      ) : null}
      {kind === 'oilCheck' ? <HowRead {...rows} /> : null}
      {hasPhotos(kind) || initial.photos.length > 0 ? (
        <PhotoField {...rows} garageId={about.garage.id} draft={draft} photos={photos} />
      ) : null}
      <When
        {...rows}
        kind={kind}
        today={start.today}
        unfolded={base !== null}
        people={about.people}
      />
      {wrong === null && saving.trouble ? (
        <NotSaved
          trouble={saving.trouble}
          kind={kind}
          about={about}
          busy={saving.busy}
          mine={() => {
            const read = readRecord(form.getValues(), writes);
            return 'entry' in read ? read.entry : null;
          }}
          onAsWritten={() => save(base, true)}
          onOrder={(order) => {
            form.setValue('dayOrder', order);
            return save(base);
          }}
          onMoved={() => {
            form.setValue('fit.change', 'moved');
            return save(base);
          }}
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

/** What a new entry begins with. */
function freshOf(kind: EntryKind, { carId, gearId, garage }: About): Writes['fresh'] {
  return {
    kind,
    zone: garage.zone,
    ...(carId === null ? {} : { car: carId }),
    ...(gearId === null ? {} : { gear: gearId }),
  };
}

/** Ticks the items that the address names, a kept draft notwithstanding. */
function useTicked(form: UseFormReturn<RecordFields>, ticked: readonly string[]): void {
  useEffect(() => {
    const done = form.getValues('service.items');
    const more = ticked.filter((id) => !done.includes(id));
    if (more.length > 0) form.setValue('service.items', [...done, ...more]);
  }, [form, ticked]);
}
