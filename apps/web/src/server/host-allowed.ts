const ALWAYS = ['127.0.0.1', 'localhost', '[::1]'];

/**
 * Whether a request names a host that is ours. A page elsewhere that has its own name resolve to this
 * machine (DNS rebinding) sends its own name and is refused.
 */
export function hostAllowed(hostHeader: string | null, publicHost: string | null): boolean {
  if (!hostHeader || !URL.canParse(`http://${hostHeader}`)) return false;
  const name = new URL(`http://${hostHeader}`).hostname;
  return ALWAYS.includes(name) || name === publicHost;
}
