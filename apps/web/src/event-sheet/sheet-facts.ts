import {
  capital,
  formatDay,
  formatNumber,
  typedWords,
  wheelsWords,
} from '@quartermark/engine/display';
import type { InspectorFacts } from '@quartermark/engine/readiness';

/** A line of the sheet. `words` is what the log says; `open` true where it says nothing. */
export type FactLine = { what: string; words: string; open: boolean };

const NOT_ON_RECORD = 'Not on record';

const said = (what: string, words: string | null): FactLine => ({
  what,
  words: words ?? NOT_ON_RECORD,
  open: words === null,
});

/**
 * What stands on a car's sheet in lines: odometer, fluid, tyres by their date codes, torque, noise, labels.
 *
 * @param unit of the car's odometer
 */
export function factLines(facts: InspectorFacts, unit: 'km' | 'mi'): FactLine[] {
  return [
    said('Odometer', odometerWords(facts)),
    ...fluidLines(facts),
    ...codeLines(facts),
    said('Wheel torque', torqueWords(facts)),
    said('Wheels', wheelsWords(facts.wheels, unit)),
    said('Noise', noiseWords(facts)),
    ...labelLines(facts),
  ];
}

function odometerWords({ odometer }: InspectorFacts): string | null {
  return odometer && `${typedWords(odometer.reading)} on ${formatDay(odometer.on)}`;
}

function fluidLines({ brakeFluid }: InspectorFacts): FactLine[] {
  if (brakeFluid.length === 0) return [said('Brake fluid', null)];
  return brakeFluid.map(({ name, on, entry }) => {
    if (on === null) return said(name, null);
    const day = formatDay(on);
    return said(name, entry === null ? `Taken as good since ${day}, no service on record` : day);
  });
}

function codeLines({ tyres }: InspectorFacts): FactLine[] {
  if (tyres.length === 0) return [said('Tyres, date codes', null)];
  return tyres.map(({ name, positions, code }) =>
    said(['Date code', name, ...positions].join(', '), code),
  );
}

function torqueWords({ torque }: InspectorFacts): string | null {
  if (torque === null) return null;
  const cold = torque.cold === null ? '' : torque.cold ? ', cold' : ', warm';
  const value = torque.value === null ? 'value not written down' : typedWords(torque.value);
  return `${value}${cold} on ${formatDay(torque.on)}`;
}

function noiseWords({ noise }: InspectorFacts): string | null {
  if (noise === null) return null;
  const db = `${formatNumber(noise.db, 1)} dB`;
  if (noise.on === null) return `${db}, as its people say, not measured on record`;
  const by = noise.byWhom === null ? '' : ` by ${noise.byWhom}`;
  return `${db}, measured${by} on ${formatDay(noise.on)}`;
}

function labelLines({ labels }: InspectorFacts): FactLine[] {
  if (labels.length === 0) return [said('Labels of those who drive', null)];
  return labels.map(({ person, name, until }) =>
    said(`${capital(name)} of ${person}`, `valid to ${formatDay(until)}`),
  );
}
