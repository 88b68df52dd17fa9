import superjson from 'superjson';

export type Answer<T> = {
  status: number;
  /** null where it was refused or failed */
  data: T | null;
  refusal: { code: string; field: string | null; message: string } | null;
};

/** Something that sends one request: `fetch` of Node, or a page's own with its cookies. */
export type Send = (
  address: string,
  request: { method: 'GET' | 'POST'; headers: Record<string, string>; body?: string },
) => Promise<{ status: number; text(): Promise<string> }>;

/** The api over HTTP, as a page speaks to it: one question a request, nothing retried. */
export class HttpApi {
  constructor(
    private readonly origin: string,
    private readonly send: Send,
    private readonly headers: Record<string, string> = {},
  ) {}

  /** Asks, and fails if there is no answer. */
  async query<T>(procedure: string, input: unknown): Promise<T> {
    const asked = encodeURIComponent(superjson.stringify(input));
    return given(await this.request<T>('GET', `${procedure}?input=${asked}`), procedure);
  }

  /** Writes, and fails if it was refused. */
  async mutate<T>(procedure: string, input: unknown): Promise<T> {
    return given(await this.attempt<T>(procedure, input), procedure);
  }

  /** Writes, and hands out whatever came back. */
  attempt<T>(procedure: string, input: unknown): Promise<Answer<T>> {
    return this.request('POST', procedure, superjson.stringify(input));
  }

  private async request<T>(
    method: 'GET' | 'POST',
    where: string,
    body?: string,
  ): Promise<Answer<T>> {
    const headers = {
      'content-type': 'application/json',
      origin: this.origin,
      ...this.headers,
    };
    const response = await this.send(`${this.origin}/api/trpc/${where}`, {
      method,
      headers,
      ...(body === undefined ? {} : { body }),
    });
    const text = await response.text();
    return { status: response.status, ...read<T>(text) };
  }
}

function read<T>(text: string): Pick<Answer<T>, 'data' | 'refusal'> {
  const { result, error } = JSON.parse(text);
  if (result) return { data: superjson.deserialize<T>(result.data), refusal: null };
  const shape = superjson.deserialize<{ data?: { refusal?: Answer<T>['refusal'] } }>(error);
  return { data: null, refusal: shape.data?.refusal ?? null };
}

function given<T>(answer: Answer<T>, procedure: string): T {
  if (answer.status === 200) return answer.data as T;
  throw new Error(`${procedure} answered ${answer.status}: ${answer.refusal?.message ?? ''}`);
}
