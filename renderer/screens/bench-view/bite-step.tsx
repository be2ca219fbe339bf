import { BigButton } from './big-button.tsx';
import { amountOf, type BiteEntry, biteSaid, withAmount } from './bite-entry.ts';
import { CutCard } from './cut-card.tsx';
import type { LimbWork } from './cut-words.ts';
import { OtherAmounts } from './other-amounts.tsx';
import classes from './panels.module.css';
import { ReadBack } from './read-back.tsx';
import { ToolChoice } from './tool-choice.tsx';
import { type ToolUse, tools, useTool } from './tools.ts';
import { useBenchKeys } from './use-bench-keys.ts';
import { useChoiceKeys } from './use-choice-keys.ts';

export interface Work {
  upper: LimbWork;
  lower: LimbWork;
}

export interface BiteStepProps {
  work: Work;
  entry: BiteEntry;
  onChange: (entry: BiteEntry) => void;
  /** Smallest step of the hand, in the unit of the work. */
  step: number;
  doneLabel: string;
  /** Where most such bites end. */
  band: string;
  busy: boolean;
  isLightPass: boolean;
  /** Null: cut as the card shows. */
  onSave: (other: { upper: number; lower: number } | null, tool: string) => void;
}

/** The cut card; then what was cut, as shown or otherwise, read back. */
export function BiteStep(props: BiteStepProps) {
  const { work, entry, onChange, doneLabel, band, busy, onSave } = props;
  const done: Work =
    entry.other === null
      ? work
      : {
          upper: withAmount(work.upper, entry.other.upper, work.lower),
          lower: withAmount(work.lower, entry.other.lower, work.upper),
        };
  const toReadBack = () => onChange({ ...entry, phase: 'read-back' });
  if (entry.phase === 'other') return <OtherAmounts {...props} />;
  if (entry.phase === 'read-back') {
    return (
      <Said
        done={done}
        isAsShown={entry.other === null}
        busy={busy}
        use={toolUse(props)}
        onYes={(tool) => {
          if (!busy) onSave(entry.other, tool);
        }}
        onOther={() => {
          const other = { upper: amountOf(done.upper).value, lower: amountOf(done.lower).value };
          onChange({ ...entry, phase: 'other', other });
        }}
        onCard={() => onChange({ ...entry, other: null, phase: 'card' })}
      />
    );
  }
  return <Card work={work} band={band} doneLabel={doneLabel} onDone={toReadBack} />;
}

function toolUse({ work, isLightPass }: BiteStepProps): ToolUse {
  if (isLightPass) return 'pass';
  const isCut = [work.upper, work.lower].some((limb) => amountOf(limb).unit === 'inches');
  return isCut ? 'cut' : 'thin';
}

interface SaidProps {
  done: Work;
  isAsShown: boolean;
  busy: boolean;
  use: ToolUse;
  onYes: (tool: string) => void;
  onOther: () => void;
  onCard: () => void;
}

function Said({ done, isAsShown, busy, use, onYes, onOther, onCard }: SaidProps) {
  const { tool, choose } = useTool(use);
  const picks = tools[use].map((name) => () => choose(name));
  useChoiceKeys({ choices: [onCard, ...picks], onConfirm: () => onYes(tool), onBack: onOther });
  return (
    <ReadBack
      said={biteSaid(done.upper, done.lower)}
      question={isAsShown ? 'Cut as shown?' : 'Right?'}
      yes="Yes, that is off"
      no="No, otherwise"
      more={
        <>
          <BigButton keyHint="1 Enter" onClick={onCard}>
            Not cut yet: back to the card
          </BigButton>
          <ToolChoice use={use} tool={tool} onChoose={choose} firstKey={2} />
        </>
      }
      busy={busy}
      onYes={() => onYes(tool)}
      onNo={onOther}
    />
  );
}

interface CardProps {
  work: Work;
  band: string;
  doneLabel: string;
  onDone: () => void;
}

function Card({ work, band, doneLabel, onDone }: CardProps) {
  useBenchKeys({ onConfirm: onDone });
  return (
    <>
      <CutCard upper={work.upper} lower={work.lower} />
      <p className={classes.quiet}>{band}</p>
      <BigButton kind="main" keyHint="Enter" onClick={onDone}>
        {doneLabel}
      </BigButton>
    </>
  );
}
