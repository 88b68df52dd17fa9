/** What became of one try; `said` is clean (see `cleanWords`) and at most 200 characters. */
export type Outcome =
  | { is: 'accepted'; said: string }
  /** for good: the same again would be refused again */
  | { is: 'refused'; by: 'server' | 'policy'; said: string }
  | {
      is: 'tryAgain';
      by: 'server' | 'network';
      said: string;
      /** all was handed over but no answer came, so that it may have arrived */
      answerLost: boolean;
      /** the least time to wait that the server asks for, seconds */
      notBeforeS?: number;
    };
