import { Mark } from '../../parts/mark.tsx';
import type { Seen } from './seen.ts';
import { weightLine } from './seen-text.ts';

interface StopWordsProps {
  seen: Seen;
  why: readonly string[];
  /** With the sentence and the weights; a bow that is not strung needs neither. */
  isTold: boolean;
}

/** What stands under the large words: what follows, why, the weights, and the cautions of the step. */
export function StopWords({ seen, why, isTold }: StopWordsProps) {
  const weights = isTold ? weightLine(seen) : null;
  return (
    <>
      {isTold ? <p>{seen.sentence}</p> : null}
      {why.map((text) => (
        <p key={text}>{text}</p>
      ))}
      {weights === null ? null : <p>{weights}</p>}
      {seen.cautions.map((text) => (
        <p key={text}>
          <Mark kind="attention">{text}</Mark>
        </p>
      ))}
    </>
  );
}
