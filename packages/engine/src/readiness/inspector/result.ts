import type { MeasuredReading } from '../../gear/result.ts';
import type { Depth, OdometerReading, Torque } from '../../log/quantity.ts';
import type { OpenFinding, OpenIncident, WheelsState } from '../../matters/result.ts';

/** What stands on a car's sheet for whoever looks it over. Nothing on record is null or an empty list. */
export type InspectorFacts = {
  /** the last reading that the log trusts, as typed */
  odometer: { reading: OdometerReading; on: string; entry: string } | null;
  /** items with the role brake fluid; none: nothing watches it */
  brakeFluid: readonly FluidFact[];
  /** the last measurement of each place */
  pads: readonly PlaceFact[];
  tread: readonly PlaceFact[];
  /** sets of tyres that are on the car */
  tyres: readonly TyreFact[];
  /** what the label or the paper of somebody who drives says */
  labels: readonly LabelFact[];
  wheels: WheelsState;
  /** the last torque on record; the value null where only the act was written down */
  torque: { on: string; value: Torque | null; cold: boolean | null; entry: string } | null;
  /** measured at an inspection, or else as its people say */
  noise: { db: number; on: string | null; byWhom: string | null } | null;
  findings: readonly OpenFinding[];
  incidents: readonly OpenIncident[];
};

export type FluidFact = {
  item: string;
  name: string;
  /** civil date of the last service; null: none on record */
  on: string | null;
  /** null with a day: the item's starting point, which is no entry of the log */
  entry: string | null;
};

export type PlaceFact = {
  /** the part that was measured; null: measured on the car, no part named */
  part: string | null;
  what: MeasuredReading['what'];
  corner: MeasuredReading['corner'];
  groove: string | null;
  /** as typed where the car's log has it, else in millimetres, to a tenth */
  depth: Depth;
  on: string;
  entry: string;
};

export type TyreFact = {
  part: string;
  name: string;
  positions: readonly string[];
  /** as it stands on the tyre: week and year, "1223"; null: not on record, or not readable */
  code: string | null;
};

export type LabelFact = {
  gear: string;
  /** whose it is */
  person: string;
  item: string;
  name: string;
  /** civil date on the label */
  until: string;
};
