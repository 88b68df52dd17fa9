import type { GearRow } from '@quartermark/api/client';
import { BEDDING_WORDS, beddingWords } from '@quartermark/engine/display';
import { StateWord } from '../components/index.ts';

/** How pads and discs are bedded; something to do while they are on a car and it is not settled. */
export function Bedding({ row: { life } }: { row: GearRow }) {
  if (life === null || life.bedding === null) return null;
  const words = beddingWords(life) ?? '';
  const toDo = life.fitted !== null && BEDDING_WORDS[life.bedding].toDo;
  return <p>{toDo ? <StateWord kind="dueSoon" words={words} /> : words}</p>;
}
