export { compose, mostLines, type Tonight } from './compose.ts';
export type { Letter, LetterLine, LetterMark, Link, LinkOf } from './letter.ts';
export { linkWords } from './line-links.ts';
export {
  type DigestSettings,
  isLetterDay,
  isPaused,
  type LetterWish,
  SETTINGS_USUAL,
  WISH_USUAL,
} from './settings.ts';
export type { Said, Why } from './to-tell.ts';
