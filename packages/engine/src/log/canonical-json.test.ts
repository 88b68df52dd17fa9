import { expect, test } from 'vitest';
import { canonicalJson } from './canonical-json.ts';

test('canonicalJson() sorts keys at every depth and writes no blanks', () => {
  const value = { b: [1, { z: null, a: 'x y' }], A: true, a: -0.5 };
  expect(canonicalJson(value)).toBe('{"A":true,"a":-0.5,"b":[1,{"a":"x y","z":null}]}');
});

test('canonicalJson() drops undefined members and keeps places in a list', () => {
  expect(canonicalJson({ a: undefined, b: [undefined, 2] })).toBe('{"b":[null,2]}');
});

test('canonicalJson() sorts by code unit, not by a language', () => {
  expect(canonicalJson({ ä: 1, z: 2, Z: 3, 10: 4, 9: 5 })).toBe('{"10":4,"9":5,"Z":3,"z":2,"ä":1}');
});

test('canonicalJson() writes minus zero as zero, as JSON does', () => {
  expect(canonicalJson([-0])).toBe('[0]');
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, 10n, () => 1, Symbol('s')])(
  'canonicalJson() refuses %s, which JSON has no word for',
  (value) => {
    expect(() => canonicalJson({ value })).toThrow(TypeError);
  },
);
