import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const here = path.dirname(fileURLToPath(import.meta.url));

/** Our own packages and relative files go into the bundle, everything else is loaded from npm. */
const ourPackagesOnly = {
  name: 'our-packages-only',
  setup(bundler) {
    bundler.onResolve({ filter: /^[^./]/ }, ({ path: name, kind }) =>
      kind === 'entry-point' || name.startsWith('@quartermark/') ? undefined : { external: true },
    );
  },
};

/**
 * Builds the worker and returns the file to run. The test build, in a folder of its own, can shift the
 * clock and stop at marked points; the plain build does not contain that code.
 */
export async function buildWorker({ test }) {
  const outfile = path.join(here, test ? 'dist-test' : 'dist', 'worker.mjs');
  await build({
    entryPoints: [path.join(here, 'src/main.ts')],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    sourcemap: true,
    minifySyntax: true,
    define: { __TEST_BUILD__: String(test) },
    plugins: [ourPackagesOnly],
    logLevel: 'warning',
  });
  return outfile;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const file = await buildWorker({ test: process.env.TEST_BUILD === '1' });
  console.log(`worker built: ${path.relative(process.cwd(), file)}`);
}
