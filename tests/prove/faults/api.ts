import type { Fault } from '../fault.ts';

const API = 'packages/api/src';
const entries = 'tests/integration/api-entries.test.ts';
const gearLog = 'tests/integration/api-gear-log.test.ts';
const live = 'tests/integration/api-live.test.ts';
const matters = 'tests/integration/api-matters.test.ts';
const photos = 'tests/integration/api-photos.test.ts';
const setup = 'tests/integration/api-setup.test.ts';

/** A command counts twice, a change is overwritten, a door stands open. */
export const apiFaults: Fault[] = [
  {
    name: 'a command sent again is done again',
    edits: [
      {
        file: `${API}/command/run-command.ts`,
        find: '    if (done) return resultOf(done, hash);\n',
        replace: '',
      },
    ],
    test: {
      file: entries,
      name: 'entry.record answers the same command again with the same result and writes once',
    },
  },
  {
    name: 'the hash of the payload is ignored',
    edits: [
      {
        file: `${API}/command/run-command.ts`,
        find: 'if (done.payloadHash === hash) return',
        replace: 'if (hash) return',
      },
    ],
    test: { file: entries, name: 'entry.record refuses the same command id with another payload' },
  },
  {
    name: 'the conflict check is skipped',
    edits: [
      {
        file: `${API}/entry/standing-entry.ts`,
        find: '  if (row.revision !== baseRevision) throw await conflict(writing, row, baseRevision);\n',
        replace: '',
      },
      {
        file: 'packages/db/src/entries/amend.ts',
        find: '        eq(entry.revision, baseRevision),\n',
        replace: '',
      },
    ],
    test: {
      file: entries,
      name: 'entry.amend and entry.remove a stale amendment is a conflict that shows the newest body',
    },
  },
  {
    name: 'recording an id again revives its tombstone',
    edits: [
      {
        file: 'packages/db/src/entries/insert.ts',
        find: '.onConflictDoNothing({ target: [entry.garageId, entry.id] })',
        replace:
          '.onConflictDoUpdate({ target: [entry.garageId, entry.id], set: { removedAt: null } })',
      },
      {
        file: 'packages/db/src/entries/insert.ts',
        find: '.values({ garageId, entryId: row.id, revision: 1, body, at, by, commandId });',
        replace:
          '.values({ garageId, entryId: row.id, revision: 1, body, at, by, commandId }).onConflictDoNothing();',
      },
    ],
    test: {
      file: entries,
      name: 'entry.amend and entry.remove a removed entry is a tombstone that no replay, amendment or new record revives',
    },
  },
  {
    name: 'the setup token is not used up by the owner',
    edits: [
      { file: `${API}/setup/owner.ts`, find: '    await useUpToken(tx, now);\n', replace: '' },
    ],
    test: {
      file: setup,
      name: 'two who want to own the house at once setup/owner lets exactly one win',
    },
  },
  {
    name: 'a session of the demo goes on after there is an owner',
    edits: [
      { file: `${API}/setup/owner.ts`, find: '    await endDemoSessions(tx);\n', replace: '' },
      { file: `${API}/context.ts`, find: 'demo && ownerExists ? null', replace: 'false ? null' },
    ],
    test: {
      file: setup,
      name: 'a house with its demo and then its owner creating the owner uses the token up and ends the demo',
    },
  },
  {
    name: 'who looks on is not asked for the membership again',
    edits: [
      {
        file: `${API}/live/changes.ts`,
        find: '      await mayLook(ctx, garageId);\n      yield event;',
        replace: '      yield event;',
      },
    ],
    test: {
      file: live,
      name: 'live.changes asks for the membership again on each delivery',
    },
  },
  {
    name: 'who looks on hears of every garage',
    edits: [
      {
        file: `${API}/live/hub.ts`,
        find: 'if (queue.garageId === told.g) push(queue',
        replace: 'if (told.g) push(queue',
      },
    ],
    test: {
      file: live,
      name: 'live.changes tells of this garage’s cars and of no other’s',
    },
  },
  {
    name: 'a streamed body is read whole, however large',
    edits: [
      {
        file: `${API}/read-capped.ts`,
        find: 'if (bytes > maxBytes) {',
        replace: 'if (bytes < 0) {',
      },
    ],
    test: {
      file: `${API}/read-capped.test.ts`,
      name: 'readCapped() stops reading a stream that states no length as soon as it is too large',
    },
  },
  {
    name: 'a set goes on a second car without a word',
    edits: [
      {
        file: `${API}/entry/check-gear.ts`,
        find: '  if (problem === null) return;',
        replace: '  if (problem?.car !== undefined) return;\n  if (problem === null) return;',
      },
    ],
    test: {
      file: 'tests/integration/api-gear.test.ts',
      name: 'of two phones that fit one set at the same time, one is told that it is on already',
    },
  },
  {
    name: 'one book that cannot be read takes every part with it',
    edits: [
      {
        file: 'packages/db/src/books/shelf.ts',
        find: '    if (error instanceof UnreadableBook) return { car, problem: error };\n',
        replace: '',
      },
    ],
    test: {
      file: gearLog,
      name: 'a book that cannot be read leaves its parts without figures and the others with theirs',
    },
  },
  {
    name: 'a finding of one car is answered from another',
    edits: [
      { file: `${API}/entry/check-named.ts`, find: '  if (!same)\n', replace: '  if (false)\n' },
    ],
    test: {
      file: 'tests/integration/api-answers.test.ts',
      name: 'an answer names a finding or an incident of its own car or piece',
    },
  },
  {
    name: 'nobody is told of a change beside the cars',
    edits: [
      {
        file: `${API}/command/raise-of.ts`,
        find: '  await tellGarage(tx, garage.id);\n',
        replace: '',
      },
      {
        file: `${API}/command/raise-entry.ts`,
        find: '  if (carId === null) await tellGarage(tx, garage.id);\n',
        replace: '',
      },
    ],
    test: {
      file: live,
      name: 'live.changes tells of the garage’s own changes once each, of no refused one and of no other’s',
    },
  },
  {
    name: 'a photo keeps what the camera wrote beside it',
    edits: [
      {
        file: `${API}/photo/prepare.ts`,
        find: '      .jpeg({ quality: 82 })',
        replace: '      .keepMetadata()\n      .jpeg({ quality: 82 })',
      },
    ],
    test: {
      file: photos,
      name: 'a photo is turned upright and loses place, camera and time; nothing of them is stored',
    },
  },
  {
    name: 'every kind of file reaches the decoder',
    edits: [
      {
        file: `${API}/photo/prepare.ts`,
        find: 'if (!sort.taken) return',
        replace: 'if (!sort.taken && bytes.length === 0) return',
      },
    ],
    test: {
      file: photos,
      name: 'a GIF file is refused by its content, with what to do, whatever type it claims',
    },
  },
  {
    name: 'an entry names photos that never arrived',
    edits: [
      {
        file: `${API}/entry/check-entry.ts`,
        find: '  await checkPhotos(writing, entry);\n',
        replace: '',
      },
    ],
    test: { file: photos, name: 'an entry names photos that have arrived, and no others' },
  },
  {
    name: 'what a removed entry resolved stays off the garage’s list',
    edits: [
      {
        file: `${API}/finding/open.ts`,
        find: '.filter(({ removedAt }) => removedAt !== null)',
        replace: '.filter(({ removedAt }) => removedAt === null)',
      },
    ],
    test: {
      file: matters,
      name: 'finding.open opens again what was resolved by an entry that was removed, as the car’s page does',
    },
  },
  {
    name: 'the same session twice is not asked about',
    edits: [
      {
        file: `${API}/entry/check-entry.ts`,
        find: "  if (!confirmed.includes('looksTheSame')) checkTwin(entry, sameDay);\n",
        replace: '',
      },
    ],
    test: {
      file: matters,
      name: 'the same session written down twice is asked about once, and kept when it happened twice',
    },
  },
];
