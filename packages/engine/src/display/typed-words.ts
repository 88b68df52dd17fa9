import type { StickLevel } from '../log/entry.ts';
import { formatNumber } from './format-number.ts';
import { levelWords } from './level-words.ts';

const UNIT_SIGN: Readonly<Record<string, string>> = {
  l: 'L',
  usQt: 'US qt',
  usGal: 'US gal',
  impQt: 'imp qt',
  impGal: 'imp gal',
  c: '°C',
  f: '°F',
  nm: 'Nm',
  lbfFt: 'lbf·ft',
  in32: '/32 in',
};

/**
 * A quantity letter for letter as it was typed, its unit beside it.
 *
 * @example typedWords({ text: '38,412', unit: 'mi' }) // "38,412 mi"
 */
export function typedWords({ text, unit }: { text: string; unit: string }): string {
  return `${text} ${UNIT_SIGN[unit] ?? unit}`;
}

/** A level as it was read, without a conversion. @example stickWords({ how: 'none' }) // "none on the stick" */
export function stickWords(level: StickLevel): string {
  switch (level.how) {
    case 'none':
    case 'over':
      return levelWords({ fraction: null, mark: level.how });
    case 'fraction':
      return fractionWords(level.fraction);
    case 'fromMax': {
      if (level.litres === 0) return 'at MAX';
      const side = level.litres > 0 ? 'above' : 'below';
      return `${formatNumber(Math.abs(level.litres), 2)} L ${side} MAX`;
    }
  }
}

const NAMED = [0, 0.25, 0.5, 0.75, 1];

/** The named stops of a stick need no number; any other fraction keeps the one that was typed. */
function fractionWords(fraction: number): string {
  const words = levelWords({ fraction, mark: null });
  if (NAMED.includes(fraction)) return words;
  return `${words} (${fraction} of the way from MIN to MAX)`;
}
