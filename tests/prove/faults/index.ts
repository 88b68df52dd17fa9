import type { Fault } from '../fault.ts';
import { apiFaults } from './api.ts';
import { databaseFaults } from './database.ts';
import { digestFaults } from './digest.ts';
import { engineFaults } from './engine.ts';
import { forecastFaults } from './forecast.ts';
import { jobsFaults } from './jobs.ts';
import { ledgerFaults } from './ledger.ts';
import { letterDoorFaults } from './letter-doors.ts';
import { letterFaults } from './letters.ts';
import { postFaults } from './post.ts';
import { readinessFaults } from './readiness.ts';

/** Every fault there is. */
export const FAULTS: readonly Fault[] = [
  ...engineFaults,
  ...forecastFaults,
  ...ledgerFaults,
  ...readinessFaults,
  ...digestFaults,
  ...databaseFaults,
  ...jobsFaults,
  ...apiFaults,
  ...postFaults,
  ...letterDoorFaults,
  ...letterFaults,
];
