import { BigButton } from './big-button.tsx';
import classes from './panels.module.css';
import { type ToolUse, tools } from './tools.ts';

interface ToolChoiceProps {
  use: ToolUse;
  tool: string;
  onChoose: (tool: string) => void;
  /** Digit of the first tool. */
  firstKey: number;
}

/** With what it came off; it may be left open. */
export function ToolChoice({ use, tool, onChoose, firstKey }: ToolChoiceProps) {
  return (
    <fieldset className={classes.tools} aria-label="With what it came off">
      <span className={classes.quiet}>With:</span>
      {tools[use].map((name, i) => (
        <BigButton
          key={name}
          pressed={name === tool}
          keyHint={`${firstKey + i} Enter`}
          onClick={() => onChoose(name)}
        >
          {name}
        </BigButton>
      ))}
    </fieldset>
  );
}
