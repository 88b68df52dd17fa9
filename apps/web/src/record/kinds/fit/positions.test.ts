import { expect, test } from 'vitest';
import { positionRows, positionsOf } from './positions.ts';

test('positionsOf() asks for an axle of pads and for nothing of an engine', () => {
  expect(positionsOf('pads').map(({ id }) => id)).toEqual(['front', 'rear']);
  expect(positionsOf('engine')).toEqual([]);
  expect(positionsOf('other')).toHaveLength(4);
});

test('positionRows() keeps what is written down, whatever the sort asks for', () => {
  expect(positionRows('tyreSet', ['frontLeft', 'boot']).map(({ words }) => words)).toEqual([
    'Front axle',
    'Rear axle',
    'Front left',
    'boot',
  ]);
});
