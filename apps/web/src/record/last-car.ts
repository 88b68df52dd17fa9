/** Names the cookie that remembers which car was last recorded for; it is offered first. */
export function lastCarCookie(garageId: string): string {
  return `quartermark-last-car-${garageId}`;
}

const YEAR_S = 31_536_000;

export function rememberCar(garageId: string, carId: string): void {
  // biome-ignore lint/suspicious/noDocumentCookie: the server reads it for the first paint, and not every browser has the Cookie Store
  document.cookie = `${lastCarCookie(garageId)}=${carId}; path=/g/${garageId}; max-age=${YEAR_S}; samesite=lax`;
}
