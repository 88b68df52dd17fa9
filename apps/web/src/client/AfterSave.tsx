'use client';

import type { CarView } from '@quartermark/api/client';
import { whatChanged } from '@quartermark/engine/display';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { useToast } from '../components/index.ts';
import { refusalWords } from './refusal-words.ts';
import { useTRPC } from './trpc.ts';

/** What the server answered to a saved entry. */
export type Saved = {
  /** null for what is about no car: nothing follows it */
  carId: string | null;
  entryId: string;
  revision: number;
  /** the car's input version that holds the entry */
  version: number;
  /** the way back; throws what the server refused. Null where there is none */
  undo: null | (() => Promise<void>);
  /** what was done, if it was not saving: "Entry removed." */
  words?: string;
};

type Waiting = Saved & { carId: string; before: CarView | null };

const AfterSaveContext = createContext<((saved: Saved) => void) | null>(null);

const ASK_AGAIN_MS = 3000;
const MOST_SAID = 4;

/**
 * What a form calls once its entry is saved: it says "Saved." with the way back, and, when the figures
 * that count the entry have come, what changed by it. It outlives the form, so go on at once. What
 * changed can only be told where the page has asked `car.view` before it saved.
 *
 * @example
 * const afterSave = useAfterSave();
 * afterSave({ carId, entryId: written.id, revision: written.revision, version: written.version, undo });
 */
export function useAfterSave(): (saved: Saved) => void {
  const afterSave = useContext(AfterSaveContext);
  if (!afterSave) throw new Error('useAfterSave() is called outside of a garage: put it in one');
  return afterSave;
}

export function AfterSaveProvider({
  garageId,
  children,
}: {
  garageId: string;
  children: ReactNode;
}) {
  const trpc = useTRPC();
  const client = useQueryClient();
  const say = useSaying();
  const [waiting, setWaiting] = useState<readonly Waiting[]>([]);

  const drop = useCallback(
    (entryId: string) => setWaiting((all) => all.filter((one) => one.entryId !== entryId)),
    [],
  );
  const afterSave = useCallback(
    (saved: Saved) => {
      const { carId } = saved;
      void client.invalidateQueries({ queryKey: trpc.entry.pathKey() });
      if (carId === null) return say(saved, null, drop);
      const shown = client.getQueryData(trpc.car.view.queryKey({ garageId, carId })) ?? null;
      const before = shown && shown.version < saved.version ? shown : null;
      void client.invalidateQueries({
        queryKey: trpc.car.lastValues.queryKey({ garageId, carId }),
      });
      say(saved, 'The figures follow.', drop);
      setWaiting((all) => [
        ...all.filter((one) => one.carId !== carId),
        { ...saved, carId, before },
      ]);
    },
    [client, trpc, garageId, say, drop],
  );

  return (
    <AfterSaveContext value={afterSave}>
      {children}
      {waiting.map((one) => (
        <Awaited key={`${one.entryId}:${one.revision}`} of={one} garageId={garageId} drop={drop} />
      ))}
    </AfterSaveContext>
  );
}

/** `detail` is null where no figure follows. */
type Say = (saved: Saved, detail: string | null, onUndo: (entryId: string) => void) => void;

function useSaying(): Say {
  const toast = useToast();
  return useCallback(
    (saved, detail, onUndo) => {
      const { undo, words = 'Saved.' } = saved;
      const id = `saved:${saved.entryId}`;
      const run = async () => {
        onUndo(saved.entryId);
        try {
          await undo?.();
          const follows = detail === null ? {} : { detail: 'The figures follow.' };
          toast({ id: `${id}:undone`, words: 'Undone.', ...follows });
        } catch (error) {
          const { message } = refusalWords(error);
          toast({ id: `${id}:undone`, words: 'Not undone.', detail: message, tone: 'alarm' });
        }
      };
      toast({
        id,
        words,
        ...(detail === null ? {} : { detail }),
        ...(undo ? { undo: { run: () => void run() } } : {}),
      });
    },
    [toast],
  );
}

type AwaitedProps = { of: Waiting; garageId: string; drop: (entryId: string) => void };

/** Looks at the car until its figures count the entry; the live line makes that quick. */
function Awaited({ of, garageId, drop }: AwaitedProps) {
  const trpc = useTRPC();
  const say = useSaying();
  const said = useRef(false);
  const { data } = useQuery({
    ...trpc.car.view.queryOptions({ garageId, carId: of.carId }),
    refetchInterval: ASK_AGAIN_MS,
  });
  const news = useMemo(() => (data ? newsOf(of, data) : null), [data, of]);
  useEffect(() => {
    if (news === null || said.current) return;
    said.current = true;
    say(of, news, drop);
    drop(of.entryId);
  }, [news, of, say, drop]);
  return null;
}

/** Null while there is nothing to tell yet. */
function newsOf({ before, version }: Waiting, view: CarView): string | null {
  if (view.failure && view.version < version)
    return `The figures are not updated: ${view.failure.cause}`;
  if (view.version < version || !view.analysis) return null;
  if (!before?.analysis) return 'The figures count it.';
  const { car, garage, items } = view;
  const { distanceUnit, volumeUnit } = garage;
  const drySump = car.profile.sump === 'dry';
  const facts = { unit: car.unit, distanceUnit, volumeUnit, drySump, items };
  const lines = whatChanged(before.analysis, view.analysis, facts);
  if (lines.length === 0) return 'No figure changes by it.';
  const rest = lines.length - MOST_SAID;
  const shown = lines.slice(0, MOST_SAID).join(' ');
  return rest > 0 ? `${shown} And ${rest} more.` : shown;
}
