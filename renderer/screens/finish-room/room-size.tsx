import { type MantineThemeOverride, MantineThemeProvider } from '@mantine/core';
import type { ReactNode } from 'react';
import classes from './finish-room.module.css';

/** Least side of what is touched with a glove on, px. */
const touch = 60;

const gloves: MantineThemeOverride = {
  components: {
    Button: { defaultProps: { h: touch, fz: 18 } },
    ActionIcon: { defaultProps: { size: touch, variant: 'subtle' } },
    Checkbox: { defaultProps: { size: 'lg' } },
    Select: { styles: { option: { minHeight: touch, fontSize: 18 } } },
    // Words under the field: fields beside each other stand on one line.
    InputWrapper: {
      defaultProps: { inputWrapperOrder: ['label', 'input', 'description', 'error'] },
    },
  },
};

/** Everything inside is as big as a gloved finger needs it. */
export function RoomSize({ children }: { children: ReactNode }) {
  return (
    <MantineThemeProvider theme={gloves} inherit>
      <div className={classes.room}>{children}</div>
    </MantineThemeProvider>
  );
}
