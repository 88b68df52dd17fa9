import { importsOf } from './imports.ts';
import { isCode, isTest, linesMatching, type Rule, type SourceFile } from './source-files.ts';

const product = (files: SourceFile[]) => files.filter((file) => isCode(file) && !isTest(file));

/** The engine, the digest and the seed give the same answer to the same question, whenever and wherever asked. */
export const pureRooms: Rule = (files) => {
  const impure =
    /\bDate\.now\b|\bnew Date\(\s*\)|\bMath\.random\b|\bprocess\.|\bperformance\.|\bcrypto\.|\bsetTimeout\b|\bsetInterval\b|\bfetch\(|\bTemporal\.Now\b|['"]node:/;
  return product(files)
    .filter((file) => /^(packages\/(engine|digest)|seed)\//.test(file.path))
    .flatMap((file) => linesMatching(file, impure));
};

/** What the database is asked stands in one room, where row-level security and indexes are in view. */
export const sqlOnlyInDb: Rule = (files) =>
  product(files)
    .filter((file) => !file.path.startsWith('packages/db/'))
    .flatMap((file) => [
      ...linesMatching(file, /\bsql`|\bsql\.unsafe\(|\.execute\(\s*['"`]/),
      ...importsOf(file)
        .filter(({ from, typeOnly }) => !typeOnly && /^(postgres|pg|drizzle-orm)(\/|$)/.test(from))
        // the queue's own backend takes a pool of `pg`; it asks nothing of our tables
        .filter(({ from }) => !(from === 'pg' && file.path === QUEUE))
        .map(({ from }) => `${file.path} imports ${from}`),
    ]);

const QUEUE = 'packages/jobs/src/worker/queue.ts';

/** One file knows which engine lies under the queue. */
export const bullmqInOneFile: Rule = (files) =>
  product(files)
    .filter((file) => importsOf(file).some(({ from }) => /^bullmq(\/|$)/.test(from)))
    .filter((file) => file.path !== QUEUE)
    .map((file) => `${file.path} imports bullmq; only ${QUEUE} may`);

/** Settings are read and checked in one file per app. */
export const settingsInEnvFiles: Rule = (files) =>
  product(files)
    .filter(
      ({ path }) =>
        !/(^|\/)(env\.ts|build\.mjs|[\w.]+\.config\.ts)$/.test(path) &&
        !path.startsWith('apps/launcher/'),
    )
    // Next.js compiles these two in; they are no settings
    .flatMap((file) => linesMatching(file, /\bprocess\.env\b(?!\.NEXT_RUNTIME|\.NODE_ENV)/));

const PROSE = 400;
/** A long file says at its top why it is long: `Long because ...`. */
export const fileLength: Rule = (files) =>
  files
    .filter((file) => /\.(ts|tsx|mjs|css|sql)$/.test(file.path))
    .filter((file) => file.text.split('\n').length - 1 > PROSE)
    .filter((file) => !/long because/i.test(file.text.split('\n').slice(0, 12).join('\n')))
    .map((file) => `${file.path} has ${file.text.split('\n').length - 1} lines and no reason`);

/** Every instant column has a zone. */
export const zonedInstants: Rule = (files) => [
  ...files
    .filter((file) => /^packages\/db\/migrations\/.*\.sql$/.test(file.path))
    .flatMap((file) =>
      linesMatching(
        { ...file, text: file.text.replace(/--.*$/gm, '') },
        /\btimestamp\b(?!\s*\(\d\)\s*with time zone)(?!\s+with time zone)/i,
      ),
    ),
  ...product(files)
    .filter((file) => file.path.startsWith('packages/db/src/'))
    .flatMap((file) => linesMatching(file, /\btimestamp\((?!.*withTimezone: true)/)),
];

const ROOMS = /(^|\/)(utils?|common|shared|core|types|services|helpers|lib)\//;
export const namedRooms: Rule = (files) =>
  files
    .filter((file) => ROOMS.test(file.path))
    .map((file) => `${file.path}: a folder is named after what it holds`);

/** A check that is switched off says why. */
export const explainedSuppressions: Rule = (files) =>
  files
    // the samples that break this very rule are text, not code
    .filter((file) => isCode(file) && file.path !== 'tests/architecture/rules.test.ts')
    .flatMap((file) =>
      file.text.split('\n').flatMap((line, at) => {
        const found =
          /(?:\/\/|\/\*)\s*@ts-(?:ignore|nocheck|expect-error)(.*)|(?:\/\/|\/\*)\s*(?:biome-ignore(?:-all)? \S+?|(?:oxlint|eslint)-disable(?:-next-line)? \S+):?(?=\s|:|$)(.*)/.exec(
            line,
          );
        const reason = (found?.[1] ?? found?.[2] ?? '').replace(/^[:\s-]+|\*\/.*$/g, '');
        return found && reason.trim().length < 5 ? [`${file.path}:${at + 1}: no reason`] : [];
      }),
    );

/** Nothing that is tracked points at one machine or at one package registry. */
export const noMachinePaths: Rule = (files) => {
  const pattern =
    /(^|[\s"'`(=:])\/(work|tmp|home|root|var\/tmp|Users)\/[\w.-]|registry\.[\w-]+\.(org|com|io|dev)|_authToken/;
  return files
    .filter((file) => !/^(tests\/architecture|deploy)\//.test(file.path))
    .flatMap((file) =>
      file.text
        .split('\n')
        .flatMap((line, at) =>
          pattern.test(line) ? [`${file.path}:${at + 1}: ${line.trim().slice(0, 120)}`] : [],
        ),
    );
};
