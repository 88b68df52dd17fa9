import type { APIRequestContext } from '@playwright/test';
import { HttpApi } from '../http-api.ts';

/** The api with the session of a browser. */
export const apiOf = (request: APIRequestContext, origin: string): HttpApi =>
  new HttpApi(origin, async (address, { method, headers, body }) => {
    const answer = await request.fetch(address, {
      method,
      headers,
      ...(body === undefined ? {} : { data: body }),
    });
    return { status: answer.status(), text: () => answer.text() };
  });
