/** Last words of every letter. */
export const CAUTION =
  'By the log alone: it advises and certifies nothing. The maker’s manual decides.';
