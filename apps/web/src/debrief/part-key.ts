/** What a line of a debrief is known by. */
export const partKey = {
  use: (carId: string, on: string) => `${carId}:use:${on}`,
  stayed: (carId: string) => `${carId}:stayed`,
  oil: (carId: string) => `${carId}:oil`,
  odometer: (carId: string) => `${carId}:odometer`,
  measure: (carId: string, gearId: string) => `${carId}:measure:${gearId}`,
  finding: (carId: string, at: number) => `${carId}:finding:${at}`,
  /** what is wrong with the car as a whole */
  car: (carId: string) => `${carId}:car`,
} as const;
