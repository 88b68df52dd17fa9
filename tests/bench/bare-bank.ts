/** Members of a state, and of a state with its covariance and weight. */
const N = 5;
const STRIDE = N + N * N + 1;

/**
 * The arithmetic of a bank of nine hypotheses and nothing else, in one typed array: what an entry costs where
 * nobody names, decides, remembers or answers anything. Every entry drives on the road, observes twice as a mixture,
 * copies two hypotheses, merges two and weighs all.
 *
 * @returns a number that depends on all of it, so that none of it can be left out
 */
export function bareBank(entries: number, hypotheses: number): number {
  const s = new Float64Array(hypotheses * STRIDE);
  const g = new Float64Array(N);
  for (let h = 0; h < hypotheses; h += 1) fill(s, h * STRIDE, h);
  for (let at = 0; at < entries; at += 1) {
    const levelL = -0.3 - 0.1 * (at % 5);
    let most = Number.NEGATIVE_INFINITY;
    for (let h = 0; h < hypotheses; h += 1) {
      const o = h * STRIDE;
      drive(s, o, g, 0.4);
      observe(s, o, g, levelL);
      if (at % 5 === 4) {
        s[o] = (s[o] as number) + 0.5;
        s[o + N] = (s[o + N] as number) + 2e-4;
      }
      most = Math.max(most, s[o + STRIDE - 1] as number);
    }
    let sum = 0;
    for (let h = 0; h < hypotheses; h += 1)
      sum += Math.exp((s[h * STRIDE + STRIDE - 1] as number) - most);
    const total = most + Math.log(sum);
    for (let h = 0; h < hypotheses; h += 1)
      s[h * STRIDE + STRIDE - 1] = (s[h * STRIDE + STRIDE - 1] as number) - total;
    merge(s, 1 * STRIDE, 2 * STRIDE);
    merge(s, 3 * STRIDE, 4 * STRIDE);
    // the two that were taken in make room for two steps of the first
    s.copyWithin(2 * STRIDE, 0, STRIDE);
    s.copyWithin(4 * STRIDE, 0, STRIDE);
    spread(s, 2 * STRIDE, 0.8);
    spread(s, 4 * STRIDE, -0.8);
  }
  return s.reduce((sum, one) => sum + one, 0);
}

function fill(s: Float64Array, o: number, h: number): void {
  s.set([-0.35, -1.4, 1.2, -2.4, h === 0 ? 0 : 0.8], o);
  s.set([0.09, 0, 0, 0, 0], o + N);
  for (let i = 1; i < N; i += 1) s[o + N + i * N + i] = 0.4;
}

function spread(s: Float64Array, o: number, size: number): void {
  s[o + 4] = size;
  for (let i = 0; i < N; i += 1) {
    s[o + N + 4 * N + i] = 0;
    s[o + N + i * N + 4] = 0;
  }
  s[o + N + 24] = 0.1225;
  s[o + STRIDE - 1] = (s[o + STRIDE - 1] as number) - 3;
}

/** Exact log-normal moments of a road drive. */
function drive(s: Float64Array, o: number, g: Float64Array, road: number): void {
  const p = o + N;
  s[p + 6] = (s[p + 6] as number) + 0.0036 * road;
  for (let j = 0; j < N; j += 1) g[j] = (s[p + j * N + 1] as number) + (s[p + j * N + 4] as number);
  const variance = (g[1] as number) + (g[4] as number);
  const mean = (s[o + 1] as number) + (s[o + 4] as number);
  const used = road * Math.exp(Math.min(mean + variance / 2, 5));
  const extra = used * used * (Math.exp(Math.min(variance, 4)) - 1);
  s[o] = (s[o] as number) - used;
  s[p] = (s[p] as number) + extra - 2 * used * (g[0] as number) + 0.015 * used + 1e-9;
  for (let j = 1; j < N; j += 1) {
    const c = (s[p + j] as number) - used * (g[j] as number);
    s[p + j] = c;
    s[p + j * N] = c;
  }
}

function observe(s: Float64Array, o: number, g: Float64Array, y: number): void {
  const p = o + N;
  const f = (s[p] as number) + 0.01;
  const v = y - (s[o] as number);
  const good = -0.06 - 0.5 * ((v * v) / f + Math.log(f));
  const wide = f + 0.36;
  const bad = -2.8 - 0.5 * ((v * v) / wide + Math.log(wide));
  const share = 1 / (1 + Math.exp(bad - good));
  s[o + STRIDE - 1] =
    (s[o + STRIDE - 1] as number) +
    Math.max(good, bad) +
    Math.log1p(Math.exp(-Math.abs(good - bad)));
  for (let i = 0; i < N; i += 1) g[i] = (s[p + i * N] as number) / f;
  const drop = share * f - share * (1 - share) * v * v;
  for (let i = 0; i < N; i += 1) {
    const k = g[i] as number;
    s[o + i] = (s[o + i] as number) + share * k * v;
    for (let j = 0; j <= i; j += 1) {
      const lower = (s[p + i * N + j] as number) - drop * k * (g[j] as number);
      s[p + i * N + j] = lower;
      s[p + j * N + i] = lower;
    }
  }
}

function merge(s: Float64Array, to: number, from: number): void {
  const [a, b] = [
    Math.exp(s[to + STRIDE - 1] as number) + 1e-12,
    Math.exp(s[from + STRIDE - 1] as number) + 1e-12,
  ];
  const share = b / (a + b);
  for (let i = 0; i < N; i += 1)
    for (let j = 0; j <= i; j += 1) {
      const di = (s[from + i] as number) - (s[to + i] as number);
      const dj = (s[from + j] as number) - (s[to + j] as number);
      const at = N + i * N + j;
      const merged =
        (1 - share) * (s[to + at] as number) +
        share * (s[from + at] as number) +
        share * (1 - share) * di * dj;
      s[to + at] = merged;
      s[to + N + j * N + i] = merged;
    }
  for (let i = 0; i < N; i += 1)
    s[to + i] = (1 - share) * (s[to + i] as number) + share * (s[from + i] as number);
  s[to + STRIDE - 1] = Math.log(a + b);
}
