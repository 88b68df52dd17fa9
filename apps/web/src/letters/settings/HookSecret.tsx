import { Button, Notice } from '../../components/index.ts';
import { CopyLine } from './CopyLine.tsx';

/** The secret of a webhook, which is shown this once, and how its receiver uses it. */
export function HookSecret({ secret, onDone }: { secret: string; onDone: () => void }) {
  return (
    <Notice
      title="The webhook’s secret, shown this once"
      actions={<Button onClick={onDone}>I have put it away</Button>}
    >
      <CopyLine what="the secret" text={secret} />
      <p>
        Your program checks each post with it: take the header Quartermark-Timestamp, a full stop
        and the body as it came, make an HMAC-SHA256 of them keyed by this secret, in hex, and
        compare it in constant time with what stands behind v1= in Quartermark-Signature. Refuse a
        timestamp more than 300 seconds away.
      </p>
    </Notice>
  );
}
