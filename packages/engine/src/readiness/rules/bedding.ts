import type { Bedding } from '../../gear/result.ts';
import type { Piece } from '../asked.ts';
import { afterWork, type Draft, draft, MET, unknown } from '../draft.ts';
import type { Known } from '../known.ts';

/** Pads and discs are bedded, or are to be in the first session. */
export function beddingNeeds(known: Known): Draft[] {
  return known.car.parts.flatMap((part) => {
    const bedding = part.result?.life?.bedding ?? null;
    return bedding === null ? [] : [needOf(known, part, bedding)];
  });
}

function needOf(known: Known, { gear, result }: Piece, bedding: Bedding): Draft {
  const { name } = gear.gear;
  const told = (how: string) => ({
    subject: gear.id,
    title: `${name}, bedding`,
    evidence: [result?.life?.fitted?.entry ?? null],
    reason: `${name}: ${how}.`,
  });
  const work = {
    work: 'bedIn',
    what: `Bed in ${name}: within the law or on a closed course, let them cool, no handbrake on hot discs`,
    record: { at: 'gear', gear: gear.id },
  } as const;
  switch (bedding) {
    case 'bedded':
      return draft('bedding', told('bedded'), MET);
    case 'firstSession':
      return known.hard
        ? draft('bedding', told('bed them in the first session, before hard braking'), MET)
        : draft('bedding', told('not bedded yet, to be done in a session'), afterWork(known, work));
    case 'notBedded':
      return draft('bedding', told('not bedded'), afterWork(known, work));
    case 'unknown':
      return draft(
        'bedding',
        told('whether they are bedded is not on record'),
        unknown(known, work),
      );
  }
}
