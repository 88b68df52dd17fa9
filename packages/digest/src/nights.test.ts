import { addDays } from '@quartermark/engine/calendar';
import { describe, expect, it } from 'vitest';
import nights from '../test/data/nights.json' with { type: 'json' };
import { HOLLOW_LANE, hollowLaneOn } from '../test/hollow-lane.ts';
import { factsOfCar } from './facts/index.ts';
import {
  compose,
  type DigestSettings,
  type Said,
  SETTINGS_USUAL,
  type Tonight,
} from './letter/index.ts';

/** Every night is composed with what the letter before it said, as it would be stored. */
function lettersOf(settings: DigestSettings, cars: Tonight['member']['cars']) {
  const letters: { date: string; subject: string; lines: string[][] }[] = [];
  let last: readonly Said[] = [];
  for (let today = nights.first; today <= nights.last; today = addDays(today, 1)) {
    const facts = hollowLaneOn(today).flatMap((car) => factsOfCar(car, today));
    const letter = compose({ today, facts, last, settings, garage: HOLLOW_LANE, member: { cars } });
    if (letter === null) continue;
    last = JSON.parse(JSON.stringify(letter.said));
    const lines = letter.lines.map(({ word, text }) => [word, text]);
    letters.push({ date: letter.date, subject: letter.subject, lines });
  }
  return letters;
}

describe('30 nights of an invented garage', () => {
  it('give its owner exactly the letters that were written down beforehand', () => {
    expect(lettersOf(SETTINGS_USUAL, 'all')).toEqual(nights.owner);
  });
  it('give somebody who sees two cars, on Mondays and before events, exactly those written down', () => {
    const monday: DigestSettings = { ...SETTINGS_USUAL, rhythm: { every: 'week', on: 1 } };
    expect(lettersOf(monday, ['c2', 'c3'])).toEqual(nights.monday);
  });
});
