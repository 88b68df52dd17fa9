import { INCIDENT_WORDS } from '../../display/cause-words.ts';
import { formatDay } from '../../display/format-day.ts';
import { listWords } from '../../display/grammar.ts';
import { findingWords, incidentWords, wakeStepWords } from '../../display/matter-words.ts';
import type { Entry } from '../../log/entry.ts';
import { sortEntries } from '../../log/sort-entries.ts';
import { keptEntries } from '../../matters/kept-entries.ts';
import type { OpenFinding } from '../../matters/result.ts';
import { afterWork, type Draft, draft, MET, notMet } from '../draft.ts';
import type { Known } from '../known.ts';

/** Findings and incidents that nobody has answered. */
export function matterNeeds(known: Known): Draft[] {
  const { findings, incidents } = known.analysis.matters;
  return [
    ...findings.flatMap((finding) => findingNeed(known, finding) ?? []),
    ...incidents.map((incident) =>
      draft(
        'incident',
        {
          subject: incident.entry,
          title: INCIDENT_WORDS[incident.what],
          reason: `${incidentWords(incident)}.`,
          evidence: [incident.entry],
        },
        stands(known, {
          work: 'lookInto',
          what: 'Go through its list, and write down what was found',
          record: { at: 'entry', kind: 'answer', notice: incident.entry },
        }),
      ),
    ),
  ];
}

/** Today it forbids driving; for a day to come there is time to put it right. */
function stands(known: Known, work: Parameters<typeof afterWork>[1]) {
  const { event, today } = known;
  return event === null || event.start <= today ? notMet(known, work) : afterWork(known, work);
}

function findingNeed(known: Known, finding: OpenFinding): Draft | null {
  const { severity, dueBy, entry, what } = finding;
  const told = {
    subject: entry,
    title: what,
    reason: `${findingWords(finding)}.`,
    evidence: [entry],
  };
  const work = {
    work: 'lookInto',
    what: `Put it right: ${what}`,
    record: { at: 'entry', kind: 'answer', notice: entry },
  } as const;
  if (severity === 'doNotDrive') return draft('doNotDrive', told, stands(known, work));
  const last = known.event?.end ?? known.today;
  const pressing = severity === 'beforeHardUse' && known.hard;
  if (!pressing && (dueBy === null || dueBy > last)) return null;
  return draft('finding', told, afterWork(known, work));
}

/** Jobs that stand open and leave the car undrivable: in pieces, as the lay-up left it, drained. */
export function openJobNeeds(known: Known): Draft[] {
  const { analysis, car } = known;
  const { wakeSteps } = analysis.matters;
  const kept = sortEntries(keptEntries(car.book.entries, known.today));
  const drained = drainedBy(kept, oilItems(known));
  return [
    ...(analysis.status === 'inPieces' ? [inPieces(known)] : []),
    ...(wakeSteps.length > 0 && (known.event !== null || analysis.status !== 'laidUp')
      ? [notWoken(known)]
      : []),
    ...(drained === null ? [] : [drainedNeed(known, drained)]),
  ];
}

function inPieces(known: Known): Draft {
  return draft(
    'openJob',
    { subject: 'pieces', title: 'In pieces', reason: 'The car is in pieces.' },
    stands(known, { work: 'finish', what: 'Put it together, and say so on the car', record: null }),
  );
}

function notWoken(known: Known): Draft {
  const steps = known.analysis.matters.wakeSteps;
  const words = listWords(steps.map(wakeStepWords), 5);
  const evidence = [...new Set(steps.map(({ layUp }) => layUp))];
  return draft(
    'openJob',
    { subject: 'layUp', title: 'Not woken up', reason: `${words}.`, evidence },
    stands(known, {
      work: 'wakeUp',
      what: 'Wake it up, step by step, with fresh air',
      record: { at: 'entry', kind: 'wakeUp' },
    }),
  );
}

function drainedNeed(known: Known, { id, on }: Entry): Draft {
  return draft(
    'openJob',
    {
      subject: id,
      title: 'Oil drained',
      reason: `Oil was drained on ${formatDay(on)} and nothing is on record that it was filled since.`,
      evidence: [id],
    },
    stands(known, {
      work: 'finish',
      what: 'Fill by the manual, read the stick, and write both down',
      record: { at: 'entry', kind: 'oilChange' },
    }),
  );
}

function oilItems({ car }: Known): ReadonlySet<string> {
  return new Set(car.book.items.flatMap(({ id, role }) => (role === 'engineOil' ? id : [])));
}

/** The entry that drained the oil, if nothing later says that oil went in or stood on the stick. */
function drainedBy(sorted: readonly Entry[], oilItems: ReadonlySet<string>): Entry | null {
  let drained: Entry | null = null;
  for (const entry of sorted) {
    if (entry.kind === 'oilChange') {
      const isFilled = entry.filled !== undefined || isOil(entry.levelAfter);
      if (entry.drained !== undefined && !isFilled) drained = entry;
      else if (isFilled) drained = null;
    }
    if (entry.kind === 'oilTopUp' || (entry.kind === 'oilCheck' && isOil(entry.level)))
      drained = null;
    if (entry.kind === 'service' && entry.items.some((id) => oilItems.has(id))) drained = null;
  }
  return drained;
}

const isOil = (level: { how: string } | undefined) => level !== undefined && level.how !== 'none';

/** The car is here and in use when it is to go. */
export function hereNeeds(known: Known): Draft[] {
  const { analysis, event, car } = known;
  const { status, laidUp } = analysis;
  const title = 'Here and in use';
  const told = { title, evidence: laidUp ? [laidUp.id] : [] };
  if (status === 'sold')
    return [draft('here', { ...told, reason: 'Sold.' }, gone(known, 'Take it off the event'))];
  if (status === 'away')
    return [
      draft(
        'here',
        { ...told, reason: 'Away: lent, or in somebody else’s hands.' },
        afterWork(known, {
          work: 'writeDown',
          what: 'Have it back, and write the handover down',
          record: { at: 'entry', kind: 'handover' },
        }),
      ),
    ];
  const window = layUpOver(known);
  if (status === 'laidUp' && window === null && laidUp?.until != null && event !== null)
    return [
      draft(
        'here',
        { title, reason: `Laid up until ${formatDay(laidUp.until)}, before it begins.` },
        afterWork(known, wake),
      ),
    ];
  if (window === null) return [draft('here', { title, reason: 'In use.' }, MET)];
  const until = window.end === undefined ? '' : ` until ${formatDay(window.end)}`;
  return [
    draft(
      'here',
      {
        ...told,
        reason: `Laid up${until}${car.book.asOf < window.start ? `, from ${formatDay(window.start)} on` : ''}.`,
      },
      afterWork(known, wake),
    ),
  ];
}

const wake = {
  work: 'wakeUp',
  what: 'Wake it up, step by step, with fresh air',
  record: { at: 'entry', kind: 'wakeUp' },
} as const;

function gone(known: Known, what: string) {
  return notMet(known, { work: 'writeDown', what, record: { at: 'event' }, possible: false });
}

/** The lay-up that covers the day, or a day of the event. */
function layUpOver({ car, event, today }: Known) {
  const [from, to] = event === null ? [today, today] : [event.start, event.end];
  return (
    car.book.layUps.find(({ start, end }) => start <= to && (end === undefined || end >= from)) ??
    null
  );
}
