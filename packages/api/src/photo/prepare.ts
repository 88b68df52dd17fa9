import sharp from 'sharp';
import { refuse } from '../refused.ts';

/** What a photo becomes: upright JPEGs of the picture alone. */
export type PreparedPhoto = {
  type: 'image/jpeg';
  width: number;
  height: number;
  picture: Uint8Array;
  small: Uint8Array;
};

/** The longest side that is kept, in pixels: a crack in a boot can still be made out. */
const SIDE_PX = 2560;
const SMALL_PX = 320;
/** What a camera makes today fits in; a bomb of a few kilobytes does not. */
const PIXELS_MAX = 120_000_000;
const TAKEN = ['jpeg', 'png', 'webp'] as const;

const notTaken = (what: string) =>
  refuse(
    'badInput',
    'photo',
    `This is ${what}. Photos are taken as JPEG, PNG or WebP; take it again with the camera, or save it as JPEG first.`,
  );

/**
 * Decodes a photo by its content and draws it anew, turned upright and at most 2560 px long. Nothing
 * but the picture is kept: no place, no time, no camera, no profile.
 *
 * @param bytes as sent, whatever type was claimed for them
 * @throws Refused `badInput` for what is no photo, or cannot be decoded
 */
export async function preparePhoto(bytes: Uint8Array): Promise<PreparedPhoto> {
  const { format, width, height } = await look(bytes);
  if (!TAKEN.some((taken) => taken === format))
    throw notTaken(format === undefined ? 'no picture' : `a ${format.toUpperCase()} file`);
  if ((width ?? 0) * (height ?? 0) > PIXELS_MAX)
    throw refuse(
      'tooLarge',
      'photo',
      `The photo has ${width} x ${height} pixels; at most ${PIXELS_MAX / 1_000_000} million are taken. Make it smaller and send it again.`,
    );
  try {
    const upright = sharp(bytes, { limitInputPixels: PIXELS_MAX, failOn: 'error' }).rotate();
    const drawn = await upright
      .resize(SIDE_PX, SIDE_PX, { fit: 'inside', withoutEnlargement: true })
      .toColourspace('srgb')
      .flatten({ background: '#ffffff' })
      .jpeg({ quality: 82 })
      .toBuffer({ resolveWithObject: true });
    const small = await sharp(drawn.data)
      .resize(SMALL_PX, SMALL_PX, { fit: 'inside', withoutEnlargement: true })
      .jpeg({ quality: 75 })
      .toBuffer();
    const { width: wide, height: high } = drawn.info;
    return { type: 'image/jpeg', width: wide, height: high, picture: drawn.data, small };
  } catch {
    // the library says what byte it stumbled over; a person wants to know what to do
    throw broken();
  }
}

const broken = () =>
  refuse(
    'badInput',
    'photo',
    'The photo could not be read: it is damaged or was cut off on its way. Choose it again, or take another one.',
  );

async function look(bytes: Uint8Array) {
  try {
    return await sharp(bytes, { limitInputPixels: false }).metadata();
  } catch {
    throw notTaken('no picture that can be read');
  }
}
