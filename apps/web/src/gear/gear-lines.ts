import { formatDay, typedWords } from '@quartermark/engine/display';
import type { GearInput } from '@quartermark/engine/log';
import type { VersionLine } from '../items/item-lines.ts';
import { sortName } from './gear-words.ts';

/** A set, a tool or a person in words, a line for each thing its form can change. */
export function gearLines(gear: GearInput): VersionLine[] {
  const said = (words: string | undefined) => words ?? 'Not said';
  const part: VersionLine[] =
    gear.kind === 'component'
      ? [
          { label: 'As it came', words: gear.condition === 'new' ? 'New' : 'Used' },
          { label: 'Here since', words: said(gear.since && formatDay(gear.since)) },
          { label: 'Date code', words: said(gear.dateCode) },
          { label: 'Your own least', words: said(gear.leastDepth && typedWords(gear.leastDepth)) },
        ]
      : [];
  return [
    { label: 'Name', words: gear.name },
    { label: 'Sort', words: sortName(gear) },
    ...part,
    { label: 'Remarks', words: said(gear.remarks) },
  ];
}
