'use client';

import { Button, useToast } from '../../components/index.ts';
import styles from './CopyLine.module.css';

type CopyLineProps = {
  /** "the address" */
  what: string;
  text: string;
};

/** Something long to be taken elsewhere: whole, to be marked by hand, and one press to copy it. */
export function CopyLine({ what, text }: CopyLineProps) {
  const toast = useToast();

  async function copy() {
    try {
      await navigator.clipboard.writeText(text);
      toast({ id: 'copied', words: `Copied ${what}.` });
    } catch {
      // not given over plain http, or refused by the person
      toast({
        id: 'copied',
        words: 'This browser does not let the page copy.',
        detail: `Mark ${what} and copy it by hand.`,
      });
    }
  }

  return (
    <div className={styles.line}>
      <code className={styles.text}>{text}</code>
      <Button onClick={copy} aria-label={`Copy ${what}`}>
        Copy
      </Button>
    </div>
  );
}
