import { wheelsWords } from '../../display/matter-words.ts';
import { afterWork, type Draft, draft, MET, notMet, unknown } from '../draft.ts';
import type { Known } from '../known.ts';

const torque = {
  work: 'torque',
  what: 'Torque the wheels by the manual, and write it down',
  record: { at: 'entry', kind: 'wheels' },
} as const;

/** Wheels that were off and have no torque on record since; before hard use, torque at all. */
export function wheelNeeds(known: Known): Draft[] {
  const { wheels } = known.analysis.matters;
  const words = wheelsWords(wheels, known.car.saidIn.distance);
  const evidence = [wheels.entry];
  const told = {
    title: 'Wheel torque',
    reason: `${words ?? 'No wheel torque is on record'}.`,
    evidence,
  };
  switch (wheels.state) {
    case 'off': {
      const now = known.event === null || known.event.start <= known.today;
      const judged = now ? notMet(known, torque) : afterWork(known, torque);
      return [draft('wheels', { ...told, title: 'Wheels off' }, judged)];
    }
    case 'notOnRecord':
      return [draft('torque', told, unknown(known, torque))];
    case 'recheckDue':
      return [
        draft(
          'torque',
          told,
          afterWork(known, {
            ...torque,
            what: 'Check the wheel torque again, cold, and write it down',
          }),
        ),
      ];
    case 'torqued':
    case 'rechecked':
      return [draft('torque', told, MET)];
  }
}
