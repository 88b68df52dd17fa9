'use client';

import type { GarageView, GearRow } from '@quartermark/api/client';
import { flagSentence, gearAnswer } from '@quartermark/engine/display';
import type { Route } from 'next';
import { ItemList } from '../car/ItemList.tsx';
import { ButtonLink, Notice, PageAnswer } from '../components/index.ts';
import { Bedding } from './Bedding.tsx';
import { GearEntries } from './GearEntries.tsx';
import { gearCautions } from './gear-cautions.ts';
import { fittedWords, gearFacts } from './gear-facts.ts';
import { sortName } from './gear-words.ts';
import { Life } from './Life.tsx';
import { Measured } from './Measured.tsx';
import styles from './PieceScreen.module.css';
import { type PieceWhere, usePiece } from './use-piece.ts';
import { Wear } from './Wear.tsx';
import { Windows } from './Windows.tsx';

/** One set, tool or person: what runs out, where it is and was, what it has behind it. */
export function PieceScreen(where: PieceWhere) {
  const { row, garage, cars, owned } = usePiece(where);
  const { gear, life } = row;
  const facts = gearFacts(row, garage.distanceUnit);
  const fitted = fittedWords(row, garage.distanceUnit);
  return (
    <>
      <PageAnswer
        about={sortName(gear)}
        beneath={
          <>
            {fitted ? <p className={styles.rest}>{fitted}</p> : null}
            <Bedding row={row} />
            {gear.remarks ? <p className={styles.remarks}>{gear.remarks}</p> : null}
          </>
        }
        action={<MainWay row={row} garage={garage} />}
      >
        {facts
          ? gearAnswer(facts)
          : `Nothing can be said of ${gear.name} now: a log could not be read.`}
      </PageAnswer>
      <Ways row={row} garage={garage} />
      <Cautions row={row} />
      <ToMend row={row} garage={garage} />
      {life?.wear ? <Wear wear={life.wear} garage={garage} /> : null}
      <div className={styles.parts}>
        <ItemList owned={owned} />
        {life && gear.kind === 'component' ? (
          <div className={styles.life}>
            <Life gear={gear} life={life} garage={garage} />
            <Windows life={life} cars={cars} garageId={garage.id} />
            <Measured life={life} unit={garage.distanceUnit} garageId={garage.id} />
          </div>
        ) : null}
      </div>
      <GearEntries row={row} garage={garage} />
    </>
  );
}

type PartProps = { row: GearRow; garage: GarageView };

const at = (garage: GarageView) => `/g/${garage.id}`;

function MainWay({ row, garage }: PartProps) {
  return (
    <ButtonLink href={`${at(garage)}/gear/${row.gearId}/done` as Route} look="main">
      Record service done
    </ButtonLink>
  );
}

/** What can be done with it besides; a part that is fitted is taken off where it is. */
function Ways({ row, garage }: PartProps) {
  const { gearId, gear, fittedTo } = row;
  const own = `${at(garage)}/gear/${gearId}`;
  const onCar = (kind: string) =>
    `${at(garage)}/record/${fittedTo?.carId}/${kind}?component=${gearId}`;
  return (
    <div className={styles.ways}>
      {gear.kind === 'component' ? (
        <>
          {fittedTo ? (
            <>
              <ButtonLink href={`${onCar('fit')}&change=off` as Route}>Take off</ButtonLink>
              <ButtonLink href={`${onCar('fit')}&change=moved` as Route}>Move</ButtonLink>
            </>
          ) : (
            <ButtonLink href={`${own}/car` as Route}>Fit to a car</ButtonLink>
          )}
          <ButtonLink href={(fittedTo ? onCar('measure') : `${own}/record/measure`) as Route}>
            Measure
          </ButtonLink>
        </>
      ) : null}
      <ButtonLink href={`${own}/record/finding` as Route}>Something is not right</ButtonLink>
      <ButtonLink href={`${own}/record/note` as Route}>Note</ButtonLink>
      <ButtonLink href={`${own}/change` as Route}>Change</ButtonLink>
    </div>
  );
}

/** A date in a list does not make it safe to work under. */
function Cautions({ row: { gear } }: Pick<PartProps, 'row'>) {
  const lines = gearCautions(gear);
  if (lines.length === 0) return null;
  return (
    <Notice tone="caution">
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        <li>Its maker’s manual comes first; a date kept here is no inspection.</li>
      </ul>
    </Notice>
  );
}

/** Where the log about it cannot be right, in a sentence each. */
function ToMend({ row: { analysis }, garage }: PartProps) {
  if (!analysis || analysis.flags.length === 0) return null;
  return (
    <Notice tone="caution" title="Look at its entries again.">
      <ul>
        {analysis.flags.map((flag) => (
          <li key={JSON.stringify(flag)}>
            {flagSentence(flag)}{' '}
            {flag.entry ? (
              <ButtonLink href={`${at(garage)}/entry/${flag.entry}` as Route} look="quiet">
                Open the entry
              </ButtonLink>
            ) : null}
          </li>
        ))}
      </ul>
    </Notice>
  );
}
