/** Holds what this browser laid aside, so that the server leaves it out at once and nothing jumps. */
export const SEEN_COOKIE = 'quartermark-seen';

/** A cookie has 4 KB; the oldest are forgotten, and are then told again. */
const SEEN_MAX = 30;
const BETWEEN = '~';

type Fact = { carId: string; key: string };

const entryOf = ({ carId, key }: Fact) => `${carId}.${key}`;

/** Whether a car's fact was laid aside here; another fact of the same car was not. */
export function isSeen(cookie: string, fact: Fact): boolean {
  return cookie.split(BETWEEN).includes(entryOf(fact));
}

/** The cookie with a fact laid aside; what was laid aside of the same car before has changed and goes. */
export function withSeen(cookie: string, fact: Fact): string {
  const others = cookie
    .split(BETWEEN)
    .filter((entry) => entry !== '' && !entry.startsWith(`${fact.carId}.`));
  return [...others, entryOf(fact)].slice(-SEEN_MAX).join(BETWEEN);
}
