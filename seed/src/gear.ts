import { addDays } from '@quartermark/engine/calendar';
import type { ItemDraft } from '@quartermark/engine/log';
import { CLUB } from './club.ts';
import { pieceOf } from './gear-sheet.ts';
import type { SeedGear } from './seed-garage.ts';

/** Numbers of the pieces, by which entries speak of them. */
export const PIECE = {
  circuitSet: 1,
  roadSet: 2,
  autocrossSet: 3,
  pads: 4,
  lift: 5,
  torqueWrench: 6,
  jack: 7,
  extinguisher: 8,
  oda: 9,
  tam: 10,
  perrin: 11,
  yselt: 12,
  tripPads: 13,
  hatchPads: 14,
  hatchTyres: 15,
} as const;

const label = (name: string, value: string, source: string): ItemDraft => ({
  name,
  limits: [{ measure: 'date', value }],
  source,
});

const months = (name: string, value: number, on: string, source: string): ItemDraft => ({
  name,
  limits: [{ measure: 'months', value }],
  baseline: { on },
  source,
});

/** What the invented club owns and who belongs to it. */
export function clubGear(day: string): SeedGear[] {
  const on = (offset: number) => addDays(day, offset);
  return [
    pieceOf(
      'circuitSet',
      PIECE.circuitSet,
      {
        kind: 'component',
        name: 'Circuit tyres, white mark',
        sort: 'tyreSet',
        condition: 'new',
        dateCode: '0426',
        leastDepth: { text: '3', unit: 'mm' },
        roadLaw: 'none',
      },
      [
        {
          name: 'Circuit tyres, worn out',
          role: 'tyres',
          limits: [{ measure: 'sessions', value: 30, weights: { road: 0, touring: 0 } }],
          leadDays: 10,
          source: "owner's own value",
        },
      ],
    ),
    pieceOf('roadSet', PIECE.roadSet, {
      kind: 'component',
      name: 'Road and rain tyres, blue mark',
      sort: 'tyreSet',
      condition: 'used',
      dateCode: '3123',
      remarks: 'Came with the second car. What they did before is not on paper.',
    }),
    pieceOf('autocrossSet', PIECE.autocrossSet, {
      kind: 'component',
      name: 'Autocross tyres, soft',
      sort: 'tyreSet',
      condition: 'new',
      dateCode: '4825',
    }),
    pieceOf('pads', PIECE.pads, {
      kind: 'component',
      name: 'Front pads, circuit compound',
      sort: 'pads',
      condition: 'new',
      leastDepth: { text: '3', unit: 'mm' },
      newDepth: { text: '11', unit: 'mm' },
    }),
    pieceOf('lift', PIECE.lift, { kind: 'equipment', name: 'Four-post lift', sort: 'lift' }, [
      months(
        'Inspection by somebody qualified',
        12,
        on(-350),
        'common practice, no source; local rules decide',
      ),
    ]),
    pieceOf(
      'torqueWrench',
      PIECE.torqueWrench,
      { kind: 'equipment', name: 'Torque wrench, 40 to 200 N·m', sort: 'torqueWrench' },
      [months('Calibration', 12, on(-380), 'ISO 6789: 12 months or 5,000 cycles')],
    ),
    pieceOf('jack', PIECE.jack, { kind: 'equipment', name: 'Trolley jack', sort: 'jack' }, [
      months('Look over', 6, on(-100), '29 CFR 1910.244'),
    ]),
    pieceOf(
      'extinguisher',
      PIECE.extinguisher,
      { kind: 'equipment', name: 'Extinguisher by the door', sort: 'extinguisher' },
      [
        {
          name: 'Look at the needle and the pin',
          limits: [{ measure: 'days', value: 31 }],
          source: 'common practice, no source',
        },
      ],
    ),
    pieceOf('oda', PIECE.oda, { kind: 'person', name: CLUB.drivers[0] }, [
      label('Helmet', on(-20), "label inside, by the organiser's rules"),
    ]),
    pieceOf('tam', PIECE.tam, { kind: 'person', name: CLUB.drivers[1] }, [
      label('Circuit licence', on(10), 'printed on the card'),
    ]),
    pieceOf('perrin', PIECE.perrin, { kind: 'person', name: CLUB.drivers[2] }, [
      label('Helmet', on(400), "label inside, by the organiser's rules"),
      label('Neck restraint, tethers', on(320), 'label on the tether'),
    ]),
    pieceOf('yselt', PIECE.yselt, { kind: 'person', name: CLUB.drivers[3] }, [
      label('Helmet', on(230), "label inside, by the organiser's rules"),
    ]),
    pieceOf('tripPads', PIECE.tripPads, {
      kind: 'component',
      name: 'Front pads, fast road',
      sort: 'pads',
      condition: 'new',
      leastDepth: { text: '3', unit: 'mm' },
      newDepth: { text: '12', unit: 'mm' },
    }),
    pieceOf(
      'hatchPads',
      PIECE.hatchPads,
      {
        kind: 'component',
        name: 'Front pads of the hatch',
        sort: 'pads',
        condition: 'new',
        leastDepth: { text: '3', unit: 'mm' },
        newDepth: { text: '10', unit: 'mm' },
      },
      [
        {
          name: 'Front pads of the hatch, worn out',
          role: 'pads',
          limits: [{ measure: 'sessions', value: 40 }],
          leadDays: 4,
          source: "owner's own value",
        },
      ],
    ),
    pieceOf('hatchTyres', PIECE.hatchTyres, {
      kind: 'component',
      name: 'Road tyres of the hatch',
      sort: 'tyreSet',
      condition: 'new',
      dateCode: '1125',
    }),
  ];
}
