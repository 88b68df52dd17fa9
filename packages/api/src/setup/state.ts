import { findSetup } from '@quartermark/db';
import type { Context } from '../context.ts';

export type SetupState = {
  /** an owner's account exists: sign-up is closed */
  ownerExists: boolean;
  /** the demo garage can be opened with the setup token */
  demoOpen: boolean;
  signedIn: boolean;
  signedInDemo: boolean;
};

/** Where a visitor stands before anything is known of them. */
export async function setupState(ctx: Context): Promise<SetupState> {
  const [setup, asker] = await Promise.all([findSetup(ctx.world.db.orm), ctx.whoAsks()]);
  const ownerExists = setup.ownerAt !== null;
  return {
    ownerExists,
    demoOpen: !ownerExists,
    signedIn: asker !== null,
    signedInDemo: asker?.demo ?? false,
  };
}
