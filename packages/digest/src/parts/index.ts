export { htmlPart } from './html-part.ts';
export { textPart } from './text-part.ts';
