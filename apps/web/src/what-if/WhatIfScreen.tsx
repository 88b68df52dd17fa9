'use client';

import type { WhatIfView } from '@quartermark/api/client';
import { whatIfSentences } from '@quartermark/engine/display';
import type { AddedUse } from '@quartermark/engine/what-if';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { Route } from 'next';
import { useEffect, useRef, useState } from 'react';
import { refusalWords } from '../client/refusal-words.ts';
import { useTRPC } from '../client/trpc.ts';
import { Button, ButtonLink, Notice, PageAnswer, Skeleton } from '../components/index.ts';
import { AddedForm } from './AddedForm.tsx';
import { writeLines } from './added-address.ts';
import { WhatIfAnswer } from './WhatIfAnswer.tsx';
import styles from './WhatIfScreen.module.css';

type WhatIfScreenProps = {
  /** as it was when the page was asked for; nothing added */
  view: WhatIfView;
  /** lines of the address */
  first: readonly AddedUse[];
  /** those of them that can be asked about today: all or none */
  possible: readonly AddedUse[];
  /** so many lines of the address could not be read */
  lost: number;
};

/** What would become of a car's dates if it did something more. The lines stand in the address alone. */
export function WhatIfScreen({ view, first, possible, lost }: WhatIfScreenProps) {
  const { garage, carId, name, unit } = view;
  const trpc = useTRPC();
  const [asked, setAsked] = useState([...possible]);
  const query = useQuery({
    ...trpc.forecast.whatIf.queryOptions({ garageId: garage.id, carId, added: asked }),
    placeholderData: keepPreviousData,
  });
  const { data, isPlaceholderData, isError, error } = query;
  const result = useFocusOn(asked, data !== undefined && !isPlaceholderData);

  function ask(added: AddedUse[]) {
    setAsked(added);
    window.history.replaceState(null, '', window.location.pathname + writeLines(added));
  }

  const shown = isPlaceholderData ? undefined : data;
  const [head, ...rest] = sentencesOf(shown, asked, isError);
  return (
    <>
      <PageAnswer
        about={`What if, ${name}`}
        beneath={
          <>
            {rest.length > 0 ? <p className={styles.rest}>{rest.join(' ')}</p> : null}
            <p>Nothing on this page is saved.</p>
          </>
        }
      >
        {head}
      </PageAnswer>
      {lost > 0 ? (
        <Notice tone="caution">
          {lost === 1 ? 'One line' : `${lost} lines`} of this address could not be read and
          {lost === 1 ? ' is' : ' are'} left out. Add it again below.
        </Notice>
      ) : null}
      <AddedForm
        carId={carId}
        unit={unit}
        today={garage.today}
        asked={asked}
        first={first}
        busy={isPlaceholderData}
        onAsk={ask}
      />
      {isError ? (
        <Notice
          tone="alarm"
          title="The dates could not be worked out."
          actions={<Button onClick={() => void query.refetch()}>Try again</Button>}
        >
          {refusalWords(error).message}
        </Notice>
      ) : null}
      <section ref={result} tabIndex={-1} aria-label="What changes" className={styles.result}>
        {isPlaceholderData && asked.length > 0 ? <Skeleton of="the dates" rows={5} /> : null}
        {shown?.answer && asked.length > 0 ? (
          <WhatIfAnswer view={shown} answer={shown.answer} asked={asked} />
        ) : null}
      </section>
      <p className={styles.caution}>
        Worked out from the log and the calendar; it advises and certifies nothing. Where the
        maker’s manual or a look at the car says sooner, that holds.
      </p>
      <p>
        <ButtonLink href={`/g/${garage.id}/car/${carId}` as Route} look="quiet">
          Back to {name}
        </ButtonLink>
      </p>
    </>
  );
}

function sentencesOf(
  view: WhatIfView | undefined,
  asked: readonly AddedUse[],
  failed: boolean,
): string[] {
  if (asked.length === 0) return ['What would change if it did more? Say what, and when.'];
  if (failed) return ['What would change is not known.'];
  if (!view) return ['What would change is being worked out …'];
  if (view.answer === null)
    return ['A part of this car’s log cannot be read, so none of its dates is known.'];
  return whatIfSentences(view.answer, { asOf: view.answer.asOf });
}

/** Once another answer stands, that is where one reads on; not on arriving at the page. */
function useFocusOn(asked: readonly AddedUse[], here: boolean) {
  const ref = useRef<HTMLElement>(null);
  const seen = useRef(asked);
  useEffect(() => {
    if (!here || seen.current === asked) return;
    seen.current = asked;
    ref.current?.focus();
  }, [asked, here]);
  return ref;
}
