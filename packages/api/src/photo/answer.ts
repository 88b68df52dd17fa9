import { id } from '../asked.ts';
import { inGarage } from '../command/in-garage.ts';
import type { Context } from '../context.ts';
import { readCapped } from '../read-capped.ts';
import { notFoundHere, type Refused, refuse, signedOut } from '../refused.ts';
import { refusalOf } from '../trpc-error.ts';
import type { Asker, World } from '../world.ts';
import { type PreparedPhoto, preparePhoto } from './prepare.ts';
import { databasePhotos, type PhotoPlace, type PhotoSize } from './store.ts';

/** The largest photo that is taken, in bytes. */
export const PHOTO_BYTES_MAX = 12 * 1024 * 1024;

const STATUS: Readonly<Record<string, number>> = {
  badInput: 415,
  notFound: 404,
  tooLarge: 413,
  signedOut: 401,
  notAllowed: 403,
};

/**
 * Takes a photo (POST, its bytes as the body) or gives one (GET, `?small=1` for the small one). Like
 * every other door it asks who is there, and tells a stranger nothing.
 */
export async function answerPhoto(
  ctx: Context,
  request: Request,
  place: { garageId: string; photoId: string },
): Promise<Response> {
  try {
    const asker = await ctx.whoAsks();
    if (!asker) throw signedOut();
    const where = placeOf(place);
    return request.method === 'POST'
      ? await take(ctx.world, asker, request, where)
      : await give(ctx.world, asker, request, where);
  } catch (error) {
    return refusedAs(error, ctx.world);
  }
}

/** What is no id is the id of nothing. */
function placeOf({ garageId, photoId }: PhotoPlace): PhotoPlace {
  if (!id.safeParse(garageId).success) throw notFoundHere('garage', 'garageId');
  if (!id.safeParse(photoId).success) throw notFoundHere('photo', 'photoId');
  return { garageId, photoId };
}

async function take(
  world: World,
  asker: Asker,
  request: Request,
  place: PhotoPlace,
): Promise<Response> {
  // another site cannot send this type without asking first, and is not answered; the route has
  // asked where the request comes from as well
  if (!(request.headers.get('content-type') ?? '').startsWith('image/'))
    throw refuse(
      'badInput',
      'photo',
      'Send the photo itself, as image/jpeg, image/png or image/webp.',
    );
  // whose garage it is, is asked before a byte is read
  const there = await inGarage(world, asker, place.garageId, (tx) =>
    databasePhotos(tx).size(place),
  );
  const bytes = await read(request);
  // sent again because its answer was lost: it is not drawn again
  const size = there ?? (await keep(world, asker, place, await preparePhoto(bytes)));
  return Response.json({ id: place.photoId, ...size });
}

function keep(
  world: World,
  asker: Asker,
  place: PhotoPlace,
  photo: PreparedPhoto,
): Promise<PhotoSize> {
  const by = { at: world.clock.now(), userId: asker.userId };
  return inGarage(world, asker, place.garageId, (tx) => databasePhotos(tx).put(place, photo, by));
}

async function read(request: Request): Promise<Uint8Array> {
  try {
    return await readCapped(request, PHOTO_BYTES_MAX);
  } catch (error) {
    if (refusalOf(error)?.code !== 'tooLarge') throw error;
    throw tooLarge(Number(request.headers.get('content-length') ?? 0));
  }
}

function tooLarge(bytes: number): Refused {
  const mb = (value: number) => Math.ceil(value / 1024 / 1024);
  const size = bytes > PHOTO_BYTES_MAX ? `${mb(bytes)} MB` : 'larger than that';
  return refuse(
    'tooLarge',
    'photo',
    `A photo may have ${mb(PHOTO_BYTES_MAX)} MB; this one is ${size}. Nothing of it was kept; make it smaller and send it again.`,
  );
}

async function give(
  world: World,
  asker: Asker,
  request: Request,
  place: PhotoPlace,
): Promise<Response> {
  const small = new URL(request.url).searchParams.get('small') === '1';
  const found = await inGarage(world, asker, place.garageId, (tx) =>
    databasePhotos(tx).get(place, small),
  );
  if (!found) throw notFoundHere('photo', 'photoId');
  return new Response(new Uint8Array(found.bytes), {
    headers: {
      'content-type': found.type,
      'x-content-type-options': 'nosniff',
      // an id stands for one picture for ever, but only for those who may see it
      'cache-control': 'private, max-age=31536000, immutable',
    },
  });
}

function refusedAs(error: unknown, world: World): Response {
  const refusal = refusalOf(error);
  if (!refusal) {
    world.log.error({ err: error }, 'a photo could not be taken or given');
    const message = 'Nothing was saved: the server could not do its part. Try again.';
    return Response.json({ message }, { status: 500 });
  }
  const { message, code } = refusal;
  return Response.json({ message, refusal }, { status: STATUS[code] ?? 400 });
}
