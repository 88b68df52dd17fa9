import type { EntryOf } from '@quartermark/engine/log';
import type { RecordFields } from '../../record-fields.ts';
import { type Members, number, type Reading, text, typed } from '../../typed.ts';

type Figure = { name: string; value: string };
export type LabReportFields = { laboratory: string; figures: Figure[] };

export const NO_FIGURE: Figure = { name: '', value: '' };

export const emptyLabReport = (): LabReportFields => ({ laboratory: '', figures: [NO_FIGURE] });

export const labReportFields = (entry: EntryOf<'labReport'>): LabReportFields => ({
  laboratory: entry.laboratory ?? '',
  figures: Object.entries(entry.figures ?? {}).map(([name, value]) => ({
    name,
    value: typed(value),
  })),
});

const LONGEST_NAME = 200;

export function readLabReport({ labReport }: RecordFields, { problems }: Reading): Members {
  const figures: Record<string, number> = {};
  labReport.figures.forEach(({ name: named, value: said }, at) => {
    const name = text(named);
    const at_ = `figures.${at}`;
    const value = number(said, `${at_}.value`, problems);
    if (name === undefined && text(said) === undefined) return;
    if (name === undefined)
      problems[`${at_}.name`] = 'Write what the figure is of, such as iron, ppm.';
    else if (name.length > LONGEST_NAME)
      problems[`${at_}.name`] = `Longer than ${LONGEST_NAME} characters; shorten it.`;
    else if (Object.hasOwn(figures, name))
      problems[`${at_}.name`] = `${name} is written twice; tell the two apart or drop one.`;
    else if (text(said) === undefined)
      problems[`${at_}.value`] = 'Write its figure, or clear its name.';
    else if (value !== undefined) figures[name] = value;
  });
  return {
    laboratory: text(labReport.laboratory),
    figures: Object.keys(figures).length === 0 ? undefined : figures,
  };
}
