import { describe, expect, it } from 'vitest';
import type { Letter, LinkOf } from '../letter/letter.ts';
import { escaped, htmlPart, MARKS } from './html-part.ts';
import { textPart } from './text-part.ts';
import { wrap } from './wrap.ts';

const linkOf: LinkOf = (link) => `https://garage.example/${link.to}`;
const LETTER: Letter = {
  date: '2026-06-15',
  subject: 'Brindle <1>: Brake fluid overdue (and 3 more)',
  heading: 'Hollow Lane, Mon 15 June 2026',
  lines: [
    {
      mark: 'overdue',
      word: 'Overdue',
      text: 'Brindle <1>: Brake fluid, since 10 June; parts ordered 1 June, expected 12 June and not here yet',
      link: { to: 'serviceForm', car: 'c1', items: ['fluid'] },
      more: [{ to: 'putOffForm', facts: ['f'], until: '2026-06-20' }],
      car: 'c1',
      facts: ['f'],
      why: 'new',
    },
  ],
  rest: { count: 3, text: 'And three more things', link: { to: 'dueList' } },
  standing: null,
  said: [],
};

describe('textPart()', () => {
  it('reads as a short letter', () => {
    expect(textPart(LETTER, linkOf).split('\r\n')).toEqual([
      'Hollow Lane, Mon 15 June 2026',
      '',
      '- Overdue. Brindle <1>: Brake fluid, since 10 June; parts ordered 1',
      '  June, expected 12 June and not here yet.',
      '  Record the work:',
      '  https://garage.example/serviceForm',
      '',
      '- And three more things.',
      '  All that is due:',
      '  https://garage.example/dueList',
      '',
      'By the log alone: it advises and certifies nothing. The maker’s manual',
      'decides.',
      '',
      'What this letter says, and when:',
      'https://garage.example/letterSettings',
      '',
    ]);
  });
});

describe('htmlPart()', () => {
  const html = htmlPart(LETTER, linkOf);
  it('has one link for each thing to do, and further forms beside it', () => {
    const links = [...html.matchAll(/href="([^"]+)">\r\n([^<]+)\r\n/g)].map(([, to, words]) => [
      to,
      words,
    ]);
    expect(links).toEqual([
      ['https://garage.example/serviceForm', 'Record the work'],
      ['https://garage.example/putOffForm', 'After Saturday'],
      ['https://garage.example/dueList', 'All that is due'],
      ['https://garage.example/letterSettings', 'What this letter says, and when'],
    ]);
  });
  it('says that it can be light and dark, and sets neither paper nor ink', () => {
    expect(html).toContain('<meta name="color-scheme" content="light dark">');
    expect(html).not.toMatch(/background|[; "]color:(?!inherit|#(d55e00|b57700|3d87b8|009e73))/);
  });
  it('has no width that 360 px could not hold', () => {
    expect(html).not.toMatch(/(?<!max-)width:|<table|nowrap/);
  });
  it('escapes what people typed, in the title too', () => {
    expect(html).toContain('Brindle &lt;1&gt;');
    expect(html).not.toContain('<1>');
    expect(escaped(`<a b="c" d='e'>&`)).toBe('&lt;a b=&quot;c&quot; d=&#39;e&#39;&gt;&amp;');
  });
});

/** Source: WCAG 2.2, definitions of relative luminance and contrast ratio. */
function contrast(one: string, other: string): number {
  const luminance = (colour: string) =>
    [0.2126, 0.7152, 0.0722].reduce((sum, weight, at) => {
      const c = Number.parseInt(colour.slice(1 + 2 * at, 3 + 2 * at), 16) / 255;
      return sum + weight * (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
    }, 0);
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

it.each(Object.entries(MARKS))(
  'the mark %s is seen on white, on black and on dark grey',
  (_name, { colour }) => {
    for (const paper of ['#ffffff', '#000000', '#1e1e1e'])
      expect(contrast(colour, paper)).toBeGreaterThanOrEqual(3);
  },
);

describe('addresses', () => {
  it.each([
    'javascript:alert(1)',
    '//garage.example',
    'https://a b',
    'https://a/\r\nBcc: x',
    `https://a/${'x'.repeat(800)}`,
  ])('are http or https and fit on a line: not %j', (address) => {
    expect(() => textPart(LETTER, () => address)).toThrow(RangeError);
    expect(() => htmlPart(LETTER, () => address)).toThrow(RangeError);
  });
});

describe('wrap()', () => {
  it.each([
    ['a look was due', 8, '  ', ['a look', '  was', '  due']],
    ['short', 72, '', ['short']],
    ['a-very-long-word and more', 8, '  ', ['a-very-long-word', '  and', '  more']],
    ['x a-very-long-word', 8, '  ', ['x', '  a-very-long-word']],
  ])('breaks %j at %i', (text, width, indent, lines) => {
    expect(wrap(text, width, indent)).toEqual(lines);
  });
});
