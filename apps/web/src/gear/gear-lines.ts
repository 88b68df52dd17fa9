import { formatDay, typedWords } from '@quartermark/engine/display';
import type { GearInput } from '@quartermark/engine/log';
import type { VersionLine } from '../forms/version-rows.ts';
import { ROAD_LAW_NAME, sortName } from './gear-words.ts';

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
          { label: 'Measured new', words: said(gear.newDepth && typedWords(gear.newDepth)) },
          ...(gear.sort === 'pads'
            ? [
                {
                  label: 'Start a circuit day above',
                  words: said(gear.startDepth && typedWords(gear.startDepth)),
                },
              ]
            : []),
          ...(gear.sort === 'tyreSet'
            ? [
                {
                  label: 'Law of the road',
                  words: said(gear.roadLaw && ROAD_LAW_NAME[gear.roadLaw]),
                },
              ]
            : []),
        ]
      : [];
  return [
    { label: 'Name', words: gear.name },
    { label: 'Sort', words: sortName(gear) },
    ...part,
    { label: 'Remarks', words: said(gear.remarks) },
  ];
}
