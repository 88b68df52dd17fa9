export type { Proposal, ProposedItem } from './proposal.ts';
export { proposeGearItems } from './propose-gear-items.ts';
export { proposeFollowUps, proposeItems } from './propose-items.ts';
export { type TrackDays, trackDays, trackDaysByMeasure } from './track-days.ts';
