'use client';

/** The longest side that is kept; enough to read a date code. */
const LONGEST_PX = 2560;
const QUALITY = 0.85;
/** What the server takes, counted while it comes in. */
const BYTES_MAX = 12 * 1024 * 1024;

const NO_PICTURE =
  'This browser cannot read that file as a picture. Choose a JPEG, PNG or WebP, or take the photo anew.';

/** Width and height, both at least 1, that fit into the longest side and keep their ratio. */
export function fitted(width: number, height: number): { width: number; height: number } {
  const share = Math.min(1, LONGEST_PX / Math.max(width, height));
  return {
    width: Math.max(1, Math.round(width * share)),
    height: Math.max(1, Math.round(height * share)),
  };
}

/**
 * A picture drawn anew as a JPEG no longer than 2,560 px, upright. Nothing but what can be seen comes
 * along: where and when it was taken stays behind.
 *
 * @throws Error with the mend, for what is no picture or too large
 */
export async function shrinkPhoto(file: Blob): Promise<Blob> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => {
    throw new Error(NO_PICTURE);
  });
  const canvas = document.createElement('canvas');
  Object.assign(canvas, fitted(picture.width, picture.height));
  const pen = canvas.getContext('2d');
  // a picture that is see-through would turn black
  if (pen) pen.fillStyle = '#fff';
  pen?.fillRect(0, 0, canvas.width, canvas.height);
  pen?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const small = await new Promise<Blob | null>((resolve) =>
    canvas.toBlob(resolve, 'image/jpeg', QUALITY),
  );
  if (!pen || !small) throw new Error(NO_PICTURE);
  if (small.size > BYTES_MAX)
    throw new Error('That picture is larger than 12 MB even when made smaller. Take it anew.');
  return small;
}
