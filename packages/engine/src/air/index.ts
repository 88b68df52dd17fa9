export { densityAltitudeM } from './density-altitude.ts';
export { dewPointOf, dryPressurePa, type MoistAir, vapourPressurePa } from './moist-air.ts';
export { type CorrectedPass, correctPass } from './pass-time.ts';
export { type PowerFactor, powerFactor } from './power-factor.ts';
export { geopotentialM, type StandardAir, standardAir, stationPressurePa } from './standard-air.ts';
export { type ColdPressure, coldFor, gaugeAt, type Warming } from './tyre-pressure.ts';
