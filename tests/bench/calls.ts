import { type Profiler, Session } from 'node:inspector/promises';

/**
 * How often a function is called while a piece of work runs, counted by the engine that runs it.
 *
 * @param name of the function; all functions of that name in the file count
 * @param file end of the path of its file
 */
export async function callsOf(name: string, file: string, work: () => unknown): Promise<number> {
  const session = new Session();
  session.connect();
  try {
    await session.post('Profiler.enable');
    await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
    await work();
    const { result } = await session.post('Profiler.takePreciseCoverage');
    await session.post('Profiler.stopPreciseCoverage');
    return result
      .filter(({ url }) => url.endsWith(file))
      .reduce((sum, it) => sum + counted(it, name), 0);
  } finally {
    session.disconnect();
  }
}

function counted({ functions }: Profiler.ScriptCoverage, name: string): number {
  return functions
    .filter(({ functionName }) => functionName === name)
    .reduce((sum, { ranges }) => sum + (ranges[0]?.count ?? 0), 0);
}
