import path from 'node:path';

/** The folder that holds `package.json` of the whole project. */
export const projectRoot = path.resolve(import.meta.dirname, '../../..');
