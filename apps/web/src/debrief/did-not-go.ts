/** What is said of a car that stayed at home: the answer of an `answer` entry whose notice is the event. */
export const DID_NOT_GO = 'did not go';
