import type { Context } from '../context.ts';

export type SetupState = {
  /** an owner's account exists: sign-up is closed */
  ownerExists: boolean;
  /** the demo garage can be opened with the setup token */
  demoOpen: boolean;
  signedIn: boolean;
  signedInDemo: boolean;
};

export async function setupState(_ctx: Context): Promise<SetupState> {
  throw new Error('setupState: under construction');
}
