export const EVENT_SORTS = ['meet', 'roadTrip', 'circuit', 'dragStrip', 'autocross'] as const;
export type EventSort = (typeof EVENT_SORTS)[number];
