import { shortText, timeZone } from '@quartermark/engine/log';
import { z } from 'zod';

/** What a garage is called, where it stands and which units it shows. */
export const garageFields = {
  name: shortText,
  zone: timeZone,
  hemisphere: z.enum(['N', 'S']).nullable().default(null),
  distanceUnit: z.enum(['km', 'mi']),
  volumeUnit: z.enum(['l', 'usQt', 'impQt']),
} as const;

const garageForm = z.strictObject(garageFields);
export type GarageFields = z.output<typeof garageForm>;
