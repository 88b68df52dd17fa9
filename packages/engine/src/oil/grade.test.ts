import { describe, expect, it } from 'vitest';
import { fitOfGrade, type OilGrade, readGrade } from './grade.ts';

describe('readGrade()', () => {
  it.each<[string, OilGrade]>([
    ['5W-40', { winter: 5, hot: 40 }],
    ['0W 20', { winter: 0, hot: 20 }],
    ['15w/50', { winter: 15, hot: 50 }],
    ['SAE 40', { winter: null, hot: 40 }],
    ['sae 10W', { winter: 10, hot: null }],
    ['SAE-30', { winter: null, hot: 30 }],
    [' 10W–60 ', { winter: 10, hot: 60 }],
    ['5W40', { winter: 5, hot: 40 }],
    ['20W20', { winter: 20, hot: 20 }],
    ['0 W - 8', { winter: 0, hot: 8 }],
    ['50', { winter: null, hot: 50 }],
  ])('reads %j', (text, grade) => {
    expect(readGrade(text)).toEqual(grade);
  });

  it.each([
    '',
    'W',
    '-40',
    '5W-',
    '7W-40',
    '5W-45',
    '5W-40-50',
    '40W-5',
    'full synthetic',
    '75W-90',
    '540',
  ])('makes no grade of %j', (text) => {
    expect(readGrade(text)).toBeNull();
  });
});

describe('fitOfGrade()', () => {
  const fit = (asked: string, poured: string) => {
    const [a, b] = [readGrade(asked), readGrade(poured)];
    if (a === null || b === null) throw new Error(`${asked} or ${poured} is no grade`);
    return fitOfGrade(a, b);
  };

  it.each([
    ['5W-40', '5W-40', 'same', 'same'],
    ['10W-60', '5W-50', 'thinner', 'colder'],
    ['0W-20', '5W-30', 'thicker', 'warmer'],
    ['0W-16', '0W-12', 'thinner', 'same'],
    ['5W-40', 'SAE 40', 'same', 'warmer'],
    ['SAE 40', '20W-40', 'same', 'same'],
    ['5W-40', '5W', 'unknown', 'same'],
    ['10W', '10W-30', 'unknown', 'same'],
  ])('of %s asked for and %s poured is %s when hot, %s in the cold', (asked, poured, hot, cold) => {
    expect(fit(asked, poured)).toMatchObject({ hot, cold });
  });

  it('knows that a grade 40 for cold starts may be thinner at 150 degrees', () => {
    expect(fit('15W-40', '5W-40').thinnerAt150).toBe(true);
    expect(fit('SAE 40', '10W-40').thinnerAt150).toBe(true);
    expect(fit('5W-40', '15W-40').thinnerAt150).toBe(false);
    expect(fit('15W-50', '5W-50').thinnerAt150).toBe(false);
    expect(fit('5W-40', '5W-30').thinnerAt150).toBe(false);
  });
});
