import { stickWords } from '@quartermark/engine/display';
import type { StickLevel } from '@quartermark/engine/log';
import { zoneOf } from './zones.ts';

/** The words of a level that is finer than the marks, so that it may stay as it was read. */
export const finerWords = (level: StickLevel | undefined) =>
  level && zoneOf(level) === 'asRead' ? stickWords(level) : null;
