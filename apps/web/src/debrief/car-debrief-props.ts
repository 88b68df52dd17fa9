import type { EventPage } from '@quartermark/api/client';
import type { Trouble } from '../client/refusal-words.ts';
import type { Problems } from '../record/typed.ts';
import type { CarFields, SavedPart } from './debrief-fields.ts';
import type { Part, ReadCar } from './debrief-parts.ts';

export type CarDebriefProps = {
  page: EventPage;
  car: EventPage['cars'][number];
  fields: CarFields;
  read: ReadCar;
  saved: Readonly<Record<string, SavedPart>>;
  troubles: Readonly<Record<string, Trouble>>;
  /** somebody answered before that it did not go */
  stayed: boolean;
  /** it was sent off once: what cannot be read is said */
  asked: boolean;
  busy: boolean;
  open: boolean;
  onOpen: () => void;
  onChange: (changed: Partial<CarFields>) => void;
  /** sends one line again, its question answered */
  onAgain: (part: Part) => Promise<void>;
};

/** What is wrong with a line: what cannot be read, else what the server said beside its fields. */
export function errorsAt({ read, asked, troubles }: CarDebriefProps, key: string): Problems {
  const wrong = asked ? read.problems[key] : undefined;
  return wrong ?? troubles[key]?.fields ?? {};
}
