/** Run once by Next when the server starts. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return;
  const { stopWell } = await import('./server/stop-well.ts');
  stopWell(() => (globalThis as { quartermarkApi?: { close(): Promise<void> } }).quartermarkApi);
}
