/** What can be chosen for a car; the first of a list is what nobody has said. */
export const UNIT_OPTIONS = [
  { value: 'km', words: 'km' },
  { value: 'mi', words: 'miles' },
] as const;
export const DIGIT_OPTIONS = [
  { value: '', words: 'Not known' },
  { value: '5', words: '5 (up to 99,999)' },
  { value: '6', words: '6 (up to 999,999)' },
  { value: '7', words: '7' },
  { value: '4', words: '4' },
] as const;
export const STATUS_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'inUse', words: 'In use' },
  { value: 'inPieces', words: 'In pieces' },
  { value: 'away', words: 'Away from the garage' },
  { value: 'sold', words: 'Sold' },
] as const;
export const SUMP_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'wet', words: 'Wet sump' },
  { value: 'dry', words: 'Dry sump, with its own tank' },
] as const;
export const INDUCTION_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'natural', words: 'Natural' },
  { value: 'forced', words: 'Forced (turbo or supercharger)' },
] as const;
export const FUEL_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'petrol', words: 'Petrol' },
  { value: 'diesel', words: 'Diesel' },
  { value: 'other', words: 'Other' },
] as const;
export const DRIVE_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'combustion', words: 'Combustion engine' },
  { value: 'hybrid', words: 'Hybrid' },
  { value: 'electric', words: 'Electric' },
] as const;
export const WHEEL_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'bolt', words: 'Bolts' },
  { value: 'stud', words: 'Studs and nuts' },
  { value: 'centreLock', words: 'Centre lock' },
] as const;
export const DISC_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'iron', words: 'Iron' },
  { value: 'carbonCeramic', words: 'Carbon ceramic' },
] as const;
export const YES_NO_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'yes', words: 'Yes' },
  { value: 'no', words: 'No' },
] as const;
/** How the oil is to be read on the stick. */
export const DIPSTICK_OPTIONS = [
  { value: '', words: 'Not said' },
  { value: 'hotIdle', words: 'Hot, engine idling' },
  { value: 'hotStopped', words: 'Hot, some minutes after stopping' },
  { value: 'cold', words: 'Cold, after standing' },
] as const;
