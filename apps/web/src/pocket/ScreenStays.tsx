'use client';

import { useEffect, useState } from 'react';
import { Tick } from '../components/index.ts';

const KEY = 'quartermark-screen-stays';

/** Keeps the screen on while this page is in sight, if the person wants that and the browser can. */
export function ScreenStays() {
  const [stays, setStays] = useState(remembered);
  useEffect(() => (stays ? hold() : undefined), [stays]);
  if (!('wakeLock' in navigator)) return null;
  return (
    <Tick
      label="Screen stays on"
      checked={stays}
      onChange={(wanted) => {
        setStays(wanted);
        remember(wanted);
      }}
    />
  );
}

/** A lock ends whenever the page goes out of sight, so it is taken again. @returns how to let go */
function hold(): () => void {
  let lock: WakeLockSentinel | null = null;
  let wanted = true;
  const take = async () => {
    if (!wanted || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    // the browser may say no, with a low battery for one; the screen then goes dark as it does elsewhere
    lock = await navigator.wakeLock.request('screen').catch(() => null);
    if (!wanted) await lock?.release();
  };
  const again = () => void take();
  document.addEventListener('visibilitychange', again);
  again();
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', again);
    void lock?.release();
  };
}

function remembered(): boolean {
  try {
    return localStorage.getItem(KEY) === '1';
  } catch {
    // storage is switched off: the screen does as the phone does
    return false;
  }
}

function remember(stays: boolean): void {
  try {
    localStorage.setItem(KEY, stays ? '1' : '0');
  } catch {
    // storage is switched off or full: it holds for now
  }
}
