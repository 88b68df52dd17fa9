/** Set by the proxy for the pages behind it: the path that was asked, to come back to after signing in. */
export const PATH_HEADER = 'x-quartermark-path';
