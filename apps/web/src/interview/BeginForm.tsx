'use client';

import type { CarView, LastValues } from '@quartermark/api/client';
import { type Proposal, proposeItems } from '@quartermark/engine/library';
import { USE_CLASSES } from '@quartermark/engine/log';
import type { Route } from 'next';
import { useCallback, useMemo, useState } from 'react';
import { type UseFormReturn, useForm, useWatch } from 'react-hook-form';
import { Button, ButtonLink, Notice } from '../components/index.ts';
import { Form, FormSection } from '../forms/Form.tsx';
import { useDraft } from '../forms/use-draft.ts';
import type { Answer } from './answer.ts';
import styles from './BeginForm.module.css';
import { type BeginFields, beginFields, profileWith } from './begin-fields.ts';
import { groupNow, items, tallyOf, tallyWords } from './group-lines.ts';
import { GROUP_WORDS, GROUPS, groupOf } from './groups.ts';
import { ProposalRow } from './ProposalRow.tsx';
import { placed, readBegin } from './read-begin.ts';
import { TheCar } from './TheCar.tsx';
import { useBegin } from './use-begin.ts';

/** One object, so that a row without an error need not be drawn again at every tap. */
const NO_ERRORS: Record<string, string> = {};

type BeginFormProps = { view: CarView; last: LastValues };

/** Profile, proposals, and one press that adds what was answered. */
export function BeginForm({ view, last }: BeginFormProps) {
  const { garage, carId, car } = view;
  const today = { today: garage.today, unit: car.unit };
  const form = useForm<BeginFields>({
    defaultValues: beginFields(car.profile, readToday(last, view)),
  });
  const forget = useDraft(`begin:${carId}`, form);
  const proposals = useProposals(form, view);
  const answers = useWatch({ control: form.control, name: 'answers' });
  const [asked, setAsked] = useState(false);
  const begin = useBegin(view);
  const keys = proposals.map(({ key }) => key);
  const tally = tallyOf(keys, answers);

  const read = readBegin(form.getValues(), proposals, today);
  const wrong = asked && 'problems' in read ? read.problems : null;
  const found =
    wrong ??
    placed(begin.trouble?.fields ?? {}, 'items' in read ? read.items.map(({ key }) => key) : []);
  const errors = Object.keys(found).length === 0 ? NO_ERRORS : found;

  async function save(fields: BeginFields) {
    setAsked(true);
    if ('problems' in read) return begin.clear();
    if (await begin.save(fields, read.items, leftWords(tally.open))) forget();
  }

  return (
    <Form
      label="Begin with the car"
      onSubmit={form.handleSubmit(save)}
      trouble={null}
      actions={null}
    >
      <TheCar form={form} errors={errors} unit={car.unit} />
      <Groups form={form} proposals={proposals} answers={answers} unit={car.unit} errors={errors} />
      <p aria-live="polite">{tallyWords(tally)}</p>
      {wrong || begin.trouble ? (
        <Notice tone="alarm">
          {wrong ? wrongWords(wrong, proposals) : begin.trouble?.message}
        </Notice>
      ) : null}
      <div className={styles.save}>
        <Button type="submit" look="main" busy={begin.busy} busyWords="Saving …">
          {tally.added === 0 ? 'Go on without items' : `Save ${items(tally.added)}`}
        </Button>
        {tally.added === 0 ? null : (
          <ButtonLink href={`/g/${garage.id}/car/${carId}` as Route} look="quiet">
            Leave it for later
          </ButtonLink>
        )}
      </div>
    </Form>
  );
}

type GroupsProps = {
  form: UseFormReturn<BeginFields>;
  proposals: readonly Proposal[];
  answers: Record<string, Answer>;
  unit: 'km' | 'mi';
  errors: Record<string, string>;
};

function Groups({ form, proposals, answers, unit, errors }: GroupsProps) {
  const onAnswer = useCallback(
    (key: string, answer: Answer | null) => {
      const { [key]: _, ...others } = form.getValues('answers');
      const next = answer === null ? others : { ...others, [key]: answer };
      form.setValue('answers', next, { shouldDirty: true });
    },
    [form],
  );
  return GROUPS.map((group) => {
    const rows = proposals.filter((proposal) => groupOf(proposal) === group);
    if (rows.length === 0) return null;
    const done = rows.filter(({ key }) => answers[key] !== undefined).length;
    return (
      <FormSection key={group} title={GROUP_WORDS[group]}>
        <p className={styles.now}>{groupNow(done, rows.length)}</p>
        <ul className={styles.list}>
          {rows.map((proposal) => (
            <ProposalRow
              key={proposal.key}
              proposal={proposal}
              answer={answers[proposal.key]}
              unit={unit}
              errors={errors}
              onAnswer={onAnswer}
            />
          ))}
        </ul>
      </FormSection>
    );
  });
}

/** What mostly runs out on such a car and is not on its list yet. */
function useProposals(form: UseFormReturn<BeginFields>, { car, items: standing }: CarView) {
  const { control } = form;
  const [sump, induction, gearbox, uses] = useWatch({
    control,
    name: ['sump', 'induction', 'gearbox', 'uses'],
  });
  return useMemo(() => {
    const said = { ...form.getValues(), sump, induction, gearbox };
    const watched = new Set(standing.map(({ item }) => item.name.toLowerCase()));
    const chosen = USE_CLASSES.filter((use) => uses[use]);
    return proposeItems(profileWith(car.profile, said), car.unit, chosen).filter(
      ({ item }) => !watched.has(item.name.toLowerCase()),
    );
  }, [form, sump, induction, gearbox, uses, car, standing]);
}

function readToday({ odometer }: LastValues, { garage, car }: CarView): string {
  return odometer && odometer.on === garage.today && odometer.unit === car.unit
    ? odometer.text
    : '';
}

function leftWords(open: number): string {
  return open === 0 ? '' : `${open} left open were not added.`;
}

function wrongWords(wrong: Record<string, string>, proposals: readonly Proposal[]): string {
  const paths = Object.keys(wrong);
  const names = proposals
    .filter(({ key }) => paths.some((path) => path.startsWith(`${key}.`)))
    .map(({ item }) => item.name);
  if (paths.includes('odometer')) names.unshift('The odometer today');
  return `Before this can be saved, look again at: ${names.join(', ')}.`;
}
