import { KIND_WORDS } from '@quartermark/engine/display';
import type { Metadata, Route } from 'next';
import { ButtonLink, PageAnswer } from '../../../../../components/index.ts';
import { Page } from '../../../../../frame/Page.tsx';
import { KIND_GROUPS, KIND_HINT } from '../../../../../record/record-kinds.ts';
import styles from '../../../../../record/Targets.module.css';
import { ask, orNotFound, pageCache } from '../../../../../server/ask.ts';

export const metadata: Metadata = { title: 'What happened' };

type ChooseKindProps = { params: Promise<{ garageId: string; carId: string }> };

const idOf = (title: string) => title.toLowerCase().replaceAll(' ', '-');

export default async function ChooseKind({ params }: ChooseKindProps) {
  const { garageId, carId } = await params;
  const { car } = await orNotFound(
    pageCache().fetchQuery(ask().car.view.queryOptions({ garageId, carId })),
  );
  const at = `/g/${garageId}`;
  return (
    <Page width="narrow">
      <PageAnswer about={car.name}>What happened?</PageAnswer>
      <div className={styles.groups}>
        {KIND_GROUPS.map(({ title, kinds }) => (
          <section key={title} aria-labelledby={idOf(title)}>
            <h2 id={idOf(title)} className={styles.group}>
              {title}
            </h2>
            <ul className={styles.kinds}>
              {kinds.map((kind) => (
                <li key={kind}>
                  <ButtonLink
                    href={`${at}/record/${carId}/${kind}` as Route}
                    className={styles.target}
                  >
                    <span>{KIND_WORDS[kind]}</span>
                    <span className={styles.hint}>{KIND_HINT[kind]}</span>
                  </ButtonLink>
                </li>
              ))}
            </ul>
          </section>
        ))}
      </div>
      <p className={styles.other}>
        <ButtonLink href={`${at}/car/${carId}` as Route} look="quiet">
          To the car
        </ButtonLink>
        <ButtonLink href={`${at}/record` as Route} look="quiet">
          Another car
        </ButtonLink>
      </p>
    </Page>
  );
}
