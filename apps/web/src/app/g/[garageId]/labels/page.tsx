import type { Metadata, Route } from 'next';
import { ButtonLink, EmptyState, Notice, PageAnswer } from '../../../../components/index.ts';
import { env } from '../../../../env.ts';
import { Page } from '../../../../frame/Page.tsx';
import styles from '../../../../labels/Labels.module.css';
import { PrintPress } from '../../../../labels/PrintPress.tsx';
import { QrCode } from '../../../../labels/QrCode.tsx';
import { orNotFound } from '../../../../server/ask.ts';
import { everyCar } from '../../../../server/every-car.ts';

export const metadata: Metadata = { title: 'Labels' };

type LabelsProps = { params: Promise<{ garageId: string }> };

export default async function Labels({ params }: LabelsProps) {
  const { garageId } = await params;
  const cars = await orNotFound(everyCar(garageId));
  const { origin } = env();
  return (
    <Page>
      <div className={styles.notPrinted}>
        <PageAnswer about="Labels" action={cars.length > 0 ? <PrintPress /> : null}>
          {cars.length === 0
            ? 'There is no car to make a label for.'
            : 'Print, cut, and stick each on its car: a camera then opens its recording.'}
        </PageAnswer>
        <OnlyHere origin={origin} />
      </div>
      {cars.length === 0 ? (
        <EmptyState
          title="Begin with one car"
          actions={
            <ButtonLink href={`/g/${garageId}/car/add` as Route} look="main">
              Add a car
            </ButtonLink>
          }
        >
          <p>Each car has a label of its own.</p>
        </EmptyState>
      ) : (
        <ul className={styles.sheet}>
          {cars.map(({ carId, name }) => (
            <li key={carId} className={styles.label}>
              <QrCode
                text={`${origin}/pocket?g=${garageId}&car=${carId}`}
                label={`Code that opens recording for ${name}`}
              />
              <span className={styles.name}>{name}</span>
            </li>
          ))}
        </ul>
      )}
    </Page>
  );
}

/** A code is of no use to a phone if it names this machine by a name that means the phone itself. */
function OnlyHere({ origin }: { origin: string }) {
  const { hostname } = new URL(origin);
  if (!['127.0.0.1', 'localhost', '[::1]'].includes(hostname)) return null;
  return (
    <Notice title="These labels open on this machine only.">
      They lead to {origin}. Start Quartermark with QUARTERMARK_ORIGIN set to the address that
      phones use, then print.
    </Notice>
  );
}
