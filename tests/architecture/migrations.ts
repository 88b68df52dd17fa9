import type { Rule } from './source-files.ts';

type Journal = { entries: { idx: number; when: number; tag: string }[] };

/** Migrations are applied in the order of their stamps, each listed once and present as a file. */
export const migrationsInOrder: Rule = (files) => {
  const journal = files.find((file) => file.path === 'packages/db/migrations/meta/_journal.json');
  if (journal === undefined) return ['the list of migrations is missing'];
  const { entries } = JSON.parse(journal.text) as Journal;
  const problems: string[] = entries.length === 0 ? ['the list of migrations is empty'] : [];
  entries.forEach((entry, at) => {
    const before = entries[at - 1];
    if (entry.idx !== at) problems.push(`${entry.tag} has number ${entry.idx}, not ${at}`);
    if (before && entry.when <= before.when)
      problems.push(`${entry.tag} has no later stamp than ${before.tag}`);
  });
  const listed = entries.map(({ tag }) => `packages/db/migrations/${tag}.sql`);
  const found = files
    .map((file) => file.path)
    .filter((file) => /^packages\/db\/migrations\/.*\.sql$/.test(file));
  for (const file of found) if (!listed.includes(file)) problems.push(`${file} is not listed`);
  for (const file of listed) if (!found.includes(file)) problems.push(`${file} does not exist`);
  return problems;
};
