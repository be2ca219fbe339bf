import { BigButton } from './big-button.tsx';
import classes from './panels.module.css';
import { useChoiceKeys } from './use-choice-keys.ts';

interface QuestionStepProps {
  question: string;
  place: number;
  count: number;
  onAnswer: (isRight: boolean) => void;
  onBack: () => void;
}

/** One question after a surprising reading. Nothing is cut until all are answered. */
export function QuestionStep({ question, place, count, onAnswer, onBack }: QuestionStepProps) {
  useChoiceKeys({ choices: [() => onAnswer(true), () => onAnswer(false)], onBack });
  return (
    <section className={classes.panel} aria-label={`Question ${place} of ${count}`}>
      <p className={classes.quiet}>
        Question {place} of {count}
      </p>
      <h2 className={classes.question}>{question}</h2>
      <div className={classes.row}>
        <BigButton keyHint="1 Enter" onClick={() => onAnswer(true)}>
          Yes
        </BigButton>
        <BigButton keyHint="2 Enter" onClick={() => onAnswer(false)}>
          No
        </BigButton>
        {place > 1 ? (
          <BigButton keyHint="Backspace" onClick={onBack}>
            Question before
          </BigButton>
        ) : null}
      </div>
    </section>
  );
}
