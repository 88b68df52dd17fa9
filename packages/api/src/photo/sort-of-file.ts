/** What a file is by its first bytes: a picture that is taken, or the name of what it is. */
export type FileSort = { taken: true } | { taken: false; name: string };

type Sign = { at: number; text: string };
const at = (place: number, text: string): Sign => ({ at: place, text });

/** JPEG (ITU-T T.81), PNG (ISO/IEC 15948) and WebP (RFC 9649), in Latin-1. */
const TAKEN: readonly (readonly Sign[])[] = [
  [at(0, '\xff\xd8\xff')],
  [at(0, '\x89PNG\r\n\x1a\n')],
  [at(0, 'RIFF'), at(8, 'WEBP')],
];

/** Others that people try, so that they can be told by name. */
const OTHERS: readonly { name: string; signs: readonly Sign[] }[] = [
  { name: 'a GIF file', signs: [at(0, 'GIF8')] },
  { name: 'a HEIC file', signs: [at(4, 'ftyphei')] },
  { name: 'a HEIC file', signs: [at(4, 'ftyphev')] },
  { name: 'a HEIC file', signs: [at(4, 'ftypmif1')] },
  { name: 'an AVIF file', signs: [at(4, 'ftypavi')] },
  { name: 'a film', signs: [at(4, 'ftyp')] },
  { name: 'a TIFF file', signs: [at(0, 'II*\0')] },
  { name: 'a TIFF file', signs: [at(0, 'MM\0*')] },
  { name: 'a PDF file', signs: [at(0, '%PDF')] },
  { name: 'a drawing made of text', signs: [at(0, '<svg')] },
  { name: 'a drawing made of text', signs: [at(0, '<?xml')] },
];

/** As many bytes as the longest sign needs. */
const HEAD_BYTES = 16;

/**
 * Tells by content alone, whatever type was claimed. Only what is taken reaches the decoder: it would
 * try many more forms, and each of them is code that a stranger's bytes would run through.
 */
export function sortOfFile(bytes: Uint8Array): FileSort {
  const head = Buffer.from(bytes.subarray(0, HEAD_BYTES)).toString('latin1');
  const has = (signs: readonly Sign[]) =>
    signs.every((sign) => head.startsWith(sign.text, sign.at));
  if (TAKEN.some(has)) return { taken: true };
  const other = OTHERS.find(({ signs }) => has(signs));
  if (other) return { taken: false, name: other.name };
  return { taken: false, name: bytes.length === 0 ? 'empty' : 'no photo' };
}
