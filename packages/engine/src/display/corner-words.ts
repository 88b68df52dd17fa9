/** What the corners of a car are called, seen from the driver's seat. */
export const CORNER_WORDS: Readonly<Record<string, string>> = {
  frontLeft: 'front left',
  frontRight: 'front right',
  rearLeft: 'rear left',
  rearRight: 'rear right',
};
