import { usualRequirements } from '@quartermark/engine/readiness';
import { expect, test } from 'vitest';
import { rulesWords, sheetAnswer, stampWords } from './sheet-words.ts';

test('stampWords() says when it was worked out in the garage’s zone, and until when it holds', () => {
  const garage = { zone: 'America/New_York' } as Parameters<typeof stampWords>[0]['garage'];
  expect(stampWords({ at: '2026-06-16T02:05:00Z', garage })).toBe(
    'Worked out 15 June 2026, 22:05 (America/New_York). Void after any entry.',
  );
});

test('sheetAnswer() counts the pages that it has', () => {
  expect(sheetAnswer(1)).toBe(
    'A page for whoever looks the car over, and a page of the work and what to take along.',
  );
  expect(sheetAnswer(3)).toContain('3 cars, a page each');
  expect(sheetAnswer(0)).toContain('No car is named');
});

test('rulesWords() names the rules in force: the event’s before the garage’s', () => {
  const usual = usualRequirements('circuit');
  const ruled = (name: string) => ({ ...usual, rules: { name, edition: '2026-01-01' } });
  const asked = { own: ruled('Series rules'), garage: ruled('Club rules'), usual };
  expect(rulesWords(asked)).toBe('Series rules, edition of 1 January 2026');
  expect(rulesWords({ ...asked, own: null })).toBe('Club rules, edition of 1 January 2026');
  // the event's own without rules: the garage's rules are not asked there
  expect(rulesWords({ ...asked, own: usual })).toContain('No organiser’s rules named');
});
