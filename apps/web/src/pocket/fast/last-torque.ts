import { type Torque, torque } from '@quartermark/engine/log';

const keyOf = (carId: string) => `quartermark-torque-${carId}`;

/** The torque last used for a car's wheels in this browser; null where none is known. */
export function lastTorque(carId: string): Torque | null {
  try {
    const kept = localStorage.getItem(keyOf(carId));
    return kept === null ? null : (torque.safeParse(JSON.parse(kept)).data ?? null);
  } catch {
    // storage is switched off, or what it holds is none: the person says it
    return null;
  }
}

export function rememberTorque(carId: string, used: Torque): void {
  try {
    localStorage.setItem(keyOf(carId), JSON.stringify(used));
  } catch {
    // storage is switched off or full: it is asked for again next time
  }
}
