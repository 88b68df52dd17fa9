import { type Requirements, requirements as schema } from '@quartermark/engine/log';
import { type Problems, readField } from '../items/limit-fields.ts';

/** What the editor of requirements holds: what is typed as typed, the rest as it is stored. */
export type RequirementFields = Pick<Requirements, 'weights' | 'limitsOf' | 'watched'> & {
  /** fraction of the way from MIN to MAX, as text */
  oilFloor: string;
  odometerDays: string;
  inspectionDays: string;
  /** empty: none is given */
  noiseDb: string;
  /** both empty: no rule set */
  rulesName: string;
  rulesEdition: string;
};

export function requirementFields(from: Requirements): RequirementFields {
  const { weights, limitsOf, watched, oilFloor, odometerDays, inspectionDays } = from;
  return {
    weights: { ...weights },
    limitsOf: [...limitsOf],
    watched: [...watched],
    oilFloor: String(oilFloor),
    odometerDays: String(odometerDays),
    inspectionDays: String(inspectionDays),
    noiseDb: from.noiseDb === undefined ? '' : String(from.noiseDb),
    rulesName: from.rules?.name ?? '',
    rulesEdition: from.rules?.edition ?? '',
  };
}

/** What is wrong beneath another path is said there; here what both halves of a rule set are called. */
const IN_FORM: Readonly<Record<string, string>> = {
  'rules.name': 'rulesName',
  'rules.edition': 'rulesEdition',
};

/**
 * What was typed as requirements; null where something is wrong with it.
 *
 * @param path where the server names them, such as `event.requirements`
 * @param problems what is wrong is added here, by `path` and the field of the form
 */
export function readRequirements(
  fields: RequirementFields,
  path: string,
  problems: Problems,
): Requirements | null {
  const own: Problems = {};
  const days = (name: 'odometerDays' | 'inspectionDays') =>
    readField(fields[name], `${path}.${name}`, own, false);
  const read = {
    weights: fields.weights,
    limitsOf: fields.limitsOf,
    watched: fields.watched,
    oilFloor: Number(fields.oilFloor),
    odometerDays: days('odometerDays'),
    inspectionDays: days('inspectionDays'),
    ...(fields.noiseDb.trim() === ''
      ? {}
      : { noiseDb: readField(fields.noiseDb, `${path}.noiseDb`, own, false) }),
    ...readRules(fields, path, own),
  };
  const parsed = schema.safeParse(read);
  for (const issue of parsed.error?.issues ?? []) {
    const place = issue.path.map(String).join('.');
    own[`${path}.${IN_FORM[place] ?? place}`] ??= sentence(issue.message);
  }
  Object.assign(problems, own);
  return parsed.success && Object.keys(own).length === 0 ? parsed.data : null;
}

type Rules = { rules?: { name: string; edition: string } };

function readRules(fields: RequirementFields, path: string, problems: Problems): Rules {
  const name = fields.rulesName.trim();
  const edition = fields.rulesEdition;
  if (name === '' && edition === '') return {};
  if (name === '')
    problems[`${path}.rulesName`] = 'Say whose rules they are, or clear the day of the edition.';
  if (edition === '')
    problems[`${path}.rulesEdition`] = 'Give the day of their edition, or clear the name.';
  return name === '' || edition === '' ? {} : { rules: { name, edition } };
}

function sentence(message: string): string {
  const said = message.startsWith('Invalid') ? 'Write a whole number of days.' : message;
  return said.charAt(0).toUpperCase() + said.slice(1);
}

/** What the server says of requirements, by the fields of the form. */
export function formErrors(errors: Problems): Problems {
  return Object.fromEntries(
    Object.entries(errors).map(([field, message]) => [
      field.replace(/rules\.(name|edition)$/, (found) => IN_FORM[found] ?? found),
      message,
    ]),
  );
}
