'use client';

import { useEffect, useRef } from 'react';
import styles from './Cautions.module.css';

type CautionsProps = { of: readonly string[] };

/** Wide enough that the list does not push the fields out of sight. */
const WIDE = '(min-width: 48rem)';

/**
 * What can hurt somebody, before the work; absent where there is nothing. On a phone it is one line that
 * opens, so that what is to be pressed is in sight at once.
 */
export function Cautions({ of }: CautionsProps) {
  const fold = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (fold.current && window.matchMedia(WIDE).matches) fold.current.open = true;
  }, []);
  const [first = '', ...rest] = of;
  if (first === '') return null;
  return (
    <details ref={fold} className={styles.cautions}>
      <summary className={styles.title}>
        <span className={styles.words}>
          <strong>With care:</strong> {first}
        </span>
      </summary>
      <ul className={styles.list}>
        {rest.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
        <li>The maker’s manual, local rules and licensed practice decide.</li>
      </ul>
    </details>
  );
}
