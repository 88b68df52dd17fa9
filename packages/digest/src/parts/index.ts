export { CAUTION } from './closing.ts';
export { htmlPart } from './html-part.ts';
export { linkAddress } from './link-address.ts';
export { textPart } from './text-part.ts';
