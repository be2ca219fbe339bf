import { type GlassSign, glassSigns } from '../../../shared/bench.ts';
import { BigButton } from './big-button.tsx';
import { type GlassAnswers, glassQuestions, glassSaid, nextSign } from './glass-signs.ts';
import classes from './panels.module.css';
import { ReadBack } from './read-back.tsx';
import { useChoiceKeys } from './use-choice-keys.ts';

interface GlassStepProps {
  answers: GlassAnswers;
  onChange: (answers: GlassAnswers) => void;
  isReading: boolean;
  onReadBack: (isReading: boolean) => void;
  busy: boolean;
  onSave: () => void;
}

/** The four signs to look for after a bite, each answered yes or no, then read back. */
export function GlassStep(props: GlassStepProps) {
  const { answers, onChange, isReading, onReadBack, busy, onSave } = props;
  const waiting = nextSign(answers);
  const give = (sign: GlassSign | null, seen: boolean) => {
    if (sign !== null) onChange({ ...answers, [sign]: seen });
  };
  const confirm = () => {
    if (waiting !== null) return;
    if (isReading) onSave();
    else onReadBack(true);
  };
  useChoiceKeys({
    choices: isReading ? [] : [() => give(waiting, true), () => give(waiting, false)],
    onConfirm: confirm,
    onBack: () => {
      if (isReading) onReadBack(false);
      else {
        const last = [...glassSigns].reverse().find((sign) => answers[sign] !== null);
        if (last !== undefined) onChange({ ...answers, [last]: null });
      }
    },
  });
  if (isReading) {
    return (
      <ReadBack
        said={glassSaid(answers)}
        busy={busy}
        onYes={onSave}
        onNo={() => onReadBack(false)}
      />
    );
  }
  return (
    <div className={classes.panel}>
      {glassSigns.map((sign) => (
        <fieldset className={classes.sign} key={sign} aria-label={glassQuestions[sign]}>
          <span className={classes.ask}>{glassQuestions[sign]}</span>
          {[true, false].map((seen) => (
            <BigButton
              key={String(seen)}
              pressed={answers[sign] === seen}
              keyHint={waiting === sign ? (seen ? '1 Enter' : '2 Enter') : undefined}
              onClick={() => give(sign, seen)}
            >
              {seen ? 'Yes' : 'No'}
            </BigButton>
          ))}
        </fieldset>
      ))}
      <BigButton
        kind="main"
        keyHint="Enter"
        disabled={waiting !== null}
        onClick={() => onReadBack(true)}
      >
        Glass looked over
      </BigButton>
    </div>
  );
}
