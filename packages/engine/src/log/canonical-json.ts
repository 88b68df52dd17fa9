/**
 * JSON whose text is the same for the same value: keys sorted by code unit, no blanks, undefined
 * members left out (undefined in a list becomes null, as in JSON).
 *
 * @throws TypeError for a number that is not finite, or anything JSON has no word for
 * @example canonicalJson({ b: [1, undefined], a: 'x' }) // '{"a":"x","b":[1,null]}'
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'string' || typeof value === 'boolean')
    return JSON.stringify(value);
  if (typeof value === 'number' && Number.isFinite(value)) return JSON.stringify(value);
  if (Array.isArray(value))
    return `[${value.map((member: unknown) => canonicalJson(member ?? null)).join(',')}]`;
  if (typeof value === 'object') {
    const members = Object.entries(value).filter(([, member]) => member !== undefined);
    members.sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${members.map(([key, member]) => `${JSON.stringify(key)}:${canonicalJson(member)}`).join(',')}}`;
  }
  throw new TypeError(
    `could not write canonical JSON of a ${typeof value} (a number must be finite), it should be plain data`,
  );
}
