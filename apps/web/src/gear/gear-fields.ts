import { readDateCode } from '@quartermark/engine/gear';
import {
  COMPONENT_SORTS,
  type ComponentSort,
  depthMm,
  EQUIPMENT_SORTS,
  type EquipmentSort,
  type GearDraft,
  type GearInput,
  type GearKind,
  type RoadLaw,
  readNumber,
} from '@quartermark/engine/log';
import type { Problems } from '../items/limit-fields.ts';

export type Depth = { text: string; unit: 'mm' | 'in32' };

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
  leastDepth: Depth;
  newDepth: Depth;
  startDepth: Depth;
  /** empty: not said */
  roadLaw: RoadLaw | '';
  remarks: string;
};

const NO_DEPTH: Depth = { text: '', unit: 'mm' };

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
    leastDepth: NO_DEPTH,
    newDepth: NO_DEPTH,
    startDepth: NO_DEPTH,
    roadLaw: '',
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
    newDepth: gear.newDepth ?? fields.newDepth,
    startDepth: gear.startDepth ?? fields.startDepth,
    roadLaw: gear.roadLaw ?? '',
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
  const { componentSort: sort, condition, since, dateCode, roadLaw } = fields;
  return {
    kind: 'component',
    sort,
    condition,
    ...common,
    ...(since === '' ? {} : { since }),
    ...(hasDateCode(sort) && dateCode.trim() !== '' ? { dateCode } : {}),
    ...(hasDateCode(sort) && roadLaw !== '' ? { roadLaw } : {}),
    ...depths(fields),
  };
}

/** The depths that belong to that sort and were filled in. */
function depths(fields: GearFields): Partial<Record<DepthName, Depth>> {
  const names: DepthName[] = hasDepth(fields.componentSort) ? ['leastDepth', 'newDepth'] : [];
  const all: DepthName[] = fields.componentSort === 'pads' ? [...names, 'startDepth'] : names;
  return Object.fromEntries(
    all.flatMap((name) => (fields[name].text.trim() === '' ? [] : [[name, fields[name]]])),
  );
}

const DEPTHS = ['leastDepth', 'newDepth', 'startDepth'] as const;
type DepthName = (typeof DEPTHS)[number];

/** What is wrong with the form's fields, by the path the server would name. */
export function readGear(fields: GearFields): { gear: GearDraft } | { problems: Problems } {
  const problems: Problems = {};
  if (fields.name.trim() === '') problems['gear.name'] = NAME_MISSING[fields.kind];
  const gear = gearDraft(fields);
  if (gear.kind === 'component') {
    const code = gear.dateCode === undefined ? null : readDateCode(gear.dateCode);
    if (code && 'problem' in code) problems['gear.dateCode'] = capital(code.problem);
    for (const name of DEPTHS) {
      const read = gear[name] ? readNumber(gear[name].text, false) : null;
      if (read && 'problem' in read) problems[`gear.${name}.text`] = capital(read.problem);
    }
    const order = depthOrder(gear);
    if (Object.keys(problems).length === 0 && order) problems['gear.newDepth.text'] = order;
  }
  return Object.keys(problems).length > 0 ? { problems } : { gear };
}

/** A part cannot be new and at its minimum. */
function depthOrder({ leastDepth, newDepth }: Partial<Record<DepthName, Depth>>): string | null {
  if (!leastDepth || !newDepth || depthMm(newDepth) > depthMm(leastDepth)) return null;
  return 'New is not more than your own least: one of the two is mistyped.';
}

const NAME_MISSING: Readonly<Record<GearKind, string>> = {
  component: 'Fill in a name, such as what you call the set.',
  equipment: 'Fill in a name, such as where it hangs.',
  person: 'Fill in a name.',
};

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
