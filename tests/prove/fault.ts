/** One exchange of text; `find` stands exactly once in the file. */
export type Edit = { file: string; find: string; replace: string };

/** A mistake somebody could make, and the test that is there to notice it. */
export type Fault = {
  name: string;
  edits: Edit[];
  /** `name` is the full name: the titles of its describe blocks, then its own */
  test: { file: string; name: string };
};
