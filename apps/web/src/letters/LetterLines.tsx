import {
  type Letter,
  type LetterLine,
  linkAddress,
  linkWords,
  type Link as Way,
} from '@quartermark/digest';
import type { Route } from 'next';
import Link from 'next/link';
import styles from './LetterLines.module.css';
import { LetterMark } from './LetterMark.tsx';
import { restWords } from './letters-words.ts';

type LetterLinesProps = {
  letter: Pick<Letter, 'lines' | 'rest' | 'standing'>;
  garageId: string;
};

/** What a letter tells, the most urgent first, each line with the ways to do something about it. */
export function LetterLines({ letter, garageId }: LetterLinesProps) {
  const { lines, rest, standing } = letter;
  return (
    <>
      {standing === null ? null : <p>{standing}</p>}
      {lines.length === 0 && rest === null ? null : (
        <ul className={styles.list}>
          {lines.map((line) => (
            <Line key={line.facts.join(' ')} line={line} garageId={garageId} />
          ))}
          {rest === null ? null : (
            <li className={styles.row}>
              <p className={styles.rest}>{restWords(rest)}</p>
              <Ways ways={[rest.link]} of={rest.text} garageId={garageId} />
            </li>
          )}
        </ul>
      )}
    </>
  );
}

function Line({ line, garageId }: { line: LetterLine; garageId: string }) {
  const { mark, word, text, link, more } = line;
  return (
    <li className={styles.row}>
      <p className={styles.line}>
        <LetterMark kind={mark} />
        <span>
          <strong>{word}</strong>. {text}.
        </span>
      </p>
      <Ways ways={[link, ...more]} of={text} garageId={garageId} />
    </li>
  );
}

type WaysProps = { ways: readonly Way[]; of: string; garageId: string };

/** Pages and forms filled in; none of them writes by being opened. */
function Ways({ ways, of, garageId }: WaysProps) {
  const addressOf = linkAddress('', garageId);
  return (
    <p className={styles.ways}>
      {ways.map((way) => (
        <Link key={way.to} href={addressOf(way) as Route} prefetch={false} className={styles.way}>
          {linkWords(way)}
          <span className={styles.unseen}>: {of}</span>
        </Link>
      ))}
    </p>
  );
}
