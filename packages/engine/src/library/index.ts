export type { Proposal, ProposedItem } from './proposal.ts';
