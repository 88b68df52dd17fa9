/** The invented club whose garage the seed fills: its zone, its people, where it drives. */
export const CLUB = {
  name: 'Quillmere Lane Motor Circle',
  zone: 'Europe/Berlin',
  circuit: 'Ostrel Loop',
  dragStrip: 'Hendrow Flats',
  autocross: 'Old Gravel Works, Velsby',
  drivers: ['Oda', 'Tam', 'Perrin', 'Yselt'],
} as const;
