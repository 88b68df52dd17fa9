import { readDateCode } from '@quartermark/engine/gear';
import {
  COMPONENT_SORTS,
  type ComponentSort,
  EQUIPMENT_SORTS,
  type EquipmentSort,
  type GearDraft,
  type GearInput,
  type GearKind,
  readNumber,
} from '@quartermark/engine/log';
import type { Problems } from '../items/limit-fields.ts';

/** What the form of a set, a tool or a person holds: everything as typed. */
export type GearFields = {
  /** revision the fields were taken from; 0 for a new one */
  baseRevision: number;
  kind: GearKind;
  name: string;
  componentSort: ComponentSort;
  equipmentSort: EquipmentSort;
  condition: 'new' | 'used';
  since: string;
  dateCode: string;
  leastDepth: { text: string; unit: 'mm' | 'in32' };
  remarks: string;
};

export function emptyGear(kind: GearKind): GearFields {
  return {
    baseRevision: 0,
    kind,
    name: '',
    componentSort: COMPONENT_SORTS[0],
    equipmentSort: EQUIPMENT_SORTS[0],
    condition: 'new',
    since: '',
    dateCode: '',
    leastDepth: { text: '', unit: 'mm' },
    remarks: '',
  };
}

/** A stored one as its form shows it. */
export function gearFields(gear: GearInput, revision: number): GearFields {
  const fields = {
    ...emptyGear(gear.kind),
    baseRevision: revision,
    name: gear.name,
    remarks: gear.remarks ?? '',
  };
  if (gear.kind === 'equipment') return { ...fields, equipmentSort: gear.sort };
  if (gear.kind === 'person') return fields;
  return {
    ...fields,
    componentSort: gear.sort,
    condition: gear.condition,
    since: gear.since ?? '',
    dateCode: gear.dateCode ?? '',
    leastDepth: gear.leastDepth ?? fields.leastDepth,
  };
}

/** Parts that tell their age by a code on them. */
export const hasDateCode = (sort: ComponentSort): boolean => sort === 'tyreSet';
/** Parts that are measured by their depth. */
export const hasDepth = (sort: ComponentSort): boolean =>
  sort === 'tyreSet' || sort === 'pads' || sort === 'discs';

/**
 * What the form holds as the server takes it; what was left empty, or does not belong to that sort, is
 * left out.
 */
export function gearDraft(fields: GearFields): GearDraft {
  const remarks = fields.remarks.trim() === '' ? {} : { remarks: fields.remarks };
  const common = { name: fields.name, ...remarks };
  if (fields.kind === 'person') return { kind: 'person', ...common };
  if (fields.kind === 'equipment')
    return { kind: 'equipment', sort: fields.equipmentSort, ...common };
  const { componentSort: sort, condition, since, dateCode, leastDepth } = fields;
  return {
    kind: 'component',
    sort,
    condition,
    ...common,
    ...(since === '' ? {} : { since }),
    ...(hasDateCode(sort) && dateCode.trim() !== '' ? { dateCode } : {}),
    ...(hasDepth(sort) && leastDepth.text.trim() !== '' ? { leastDepth } : {}),
  };
}

/** What is wrong with the form's fields, by the path the server would name. */
export function readGear(fields: GearFields): { gear: GearDraft } | { problems: Problems } {
  const problems: Problems = {};
  if (fields.name.trim() === '') problems['gear.name'] = NAME_MISSING[fields.kind];
  const gear = gearDraft(fields);
  if (gear.kind === 'component') {
    const code = gear.dateCode === undefined ? null : readDateCode(gear.dateCode);
    if (code && 'problem' in code) problems['gear.dateCode'] = capital(code.problem);
    const read = gear.leastDepth ? readNumber(gear.leastDepth.text, false) : null;
    if (read && 'problem' in read) problems['gear.leastDepth.text'] = capital(read.problem);
  }
  return Object.keys(problems).length > 0 ? { problems } : { gear };
}

const NAME_MISSING: Readonly<Record<GearKind, string>> = {
  component: 'Fill in a name, such as what you call the set.',
  equipment: 'Fill in a name, such as where it hangs.',
  person: 'Fill in a name.',
};

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
