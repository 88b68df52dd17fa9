import sharp from 'sharp';
import { refuse } from '../refused.ts';
import { sortOfFile } from './sort-of-file.ts';

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

/** The drawing that goes on; the next one waits for it. */
let drawing: Promise<unknown> = Promise.resolve();

/**
 * Decodes a photo by its content and draws it anew, turned upright and at most 2560 px long. Nothing
 * but the picture is kept: no place, no time, no camera, no profile.
 *
 * One at a time: one of 119 million pixels takes about 100 MB while it is drawn (measured).
 *
 * @param bytes as sent, whatever type was claimed for them
 * @throws Refused `badInput` for what is no photo, or cannot be decoded; `tooLarge` for too many pixels
 */
export function preparePhoto(bytes: Uint8Array): Promise<PreparedPhoto> {
  const sort = sortOfFile(bytes);
  if (!sort.taken) return Promise.reject(notTaken(sort.name));
  const drawn = drawing.then(() => draw(bytes));
  drawing = drawn.catch(() => {});
  return drawn;
}

async function draw(bytes: Uint8Array): Promise<PreparedPhoto> {
  const { width, height } = await look(bytes);
  if (width * height > PIXELS_MAX)
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

/** Reads the head alone: no pixel is decoded. */
async function look(bytes: Uint8Array): Promise<{ width: number; height: number }> {
  try {
    const { width, height } = await sharp(bytes, { limitInputPixels: false }).metadata();
    return { width, height };
  } catch {
    throw broken();
  }
}

const notTaken = (what: string) =>
  refuse(
    'badInput',
    'photo',
    `This is ${what}. Photos are taken as JPEG, PNG or WebP; take it again with the camera, or save it as JPEG first.`,
  );

const broken = () =>
  refuse(
    'badInput',
    'photo',
    'The photo could not be read: it is damaged or was cut off on its way. Choose it again, or take another one.',
  );
