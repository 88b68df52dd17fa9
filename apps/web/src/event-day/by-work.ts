import { type Need, WORK_KINDS } from '@quartermark/engine/readiness';

const place = ({ remedy }: Need) =>
  remedy === null ? WORK_KINDS.length : WORK_KINDS.indexOf(remedy.work);

/** What is not met, what blocks before what is advice, each in the order in which one works. */
export function byWork(needs: readonly Need[]): Need[] {
  const weight = (need: Need) => (need.weight === 'blocking' ? 0 : 1);
  return needs
    .filter(({ status }) => status !== 'met')
    .sort((a, b) => weight(a) - weight(b) || place(a) - place(b));
}
