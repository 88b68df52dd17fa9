import type { Draft } from '../draft.ts';
import type { Known } from '../known.ts';
import { beddingNeeds } from './bedding.ts';
import { crewNeeds } from './crew.ts';
import { inspectionNeeds, noiseNeeds } from './inspections.ts';
import { limitNeeds } from './limits.ts';
import { hereNeeds, matterNeeds, openJobNeeds } from './matters.ts';
import { oilLastsNeeds, oilLevelNeeds, oilLookNeeds } from './oil.ts';
import { odometerNeeds, pastNeeds, plannedUseNeeds } from './on-record.ts';
import { partLimitNeeds } from './part-limits.ts';
import { tyreAgeNeeds } from './tyre-age.ts';
import { padNeeds, tyreNeeds } from './wear.ts';
import { wheelNeeds } from './wheels.ts';

/** The table of rules: each says what is asked of a car, and nothing where it does not apply. */
export const RULES: readonly ((known: Known) => Draft[])[] = [
  matterNeeds,
  openJobNeeds,
  hereNeeds,
  wheelNeeds,
  limitNeeds,
  partLimitNeeds,
  oilLevelNeeds,
  oilLastsNeeds,
  oilLookNeeds,
  padNeeds,
  beddingNeeds,
  tyreNeeds,
  tyreAgeNeeds,
  inspectionNeeds,
  noiseNeeds,
  crewNeeds,
  odometerNeeds,
  pastNeeds,
  plannedUseNeeds,
];
