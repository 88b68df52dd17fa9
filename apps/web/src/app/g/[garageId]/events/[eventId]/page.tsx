import type { Route } from 'next';
import { redirect } from 'next/navigation';

type EventProps = { params: Promise<{ garageId: string; eventId: string }> };

/** Until an event has a page of its own, its form is what there is to see. */
export default async function Event({ params }: EventProps) {
  const { garageId, eventId } = await params;
  redirect(`/g/${garageId}/events/${eventId}/change` as Route);
}
