import { Button } from '@mantine/core';
import dayjs from 'dayjs';
import { Mark } from '../../parts/mark.tsx';
import classes from './intake.module.css';
import type { Saving } from './use-draft.ts';

interface SavedNoteProps {
  saving: Saving;
  onAgain: () => void;
}

/** Whether what was typed is kept. */
export function SavedNote({ saving, onAgain }: SavedNoteProps) {
  if (saving.state === 'failed') {
    return (
      <span className={classes.end} role="alert">
        <Mark kind="attention">Draft not saved. {saving.sentence}</Mark>
        <Button variant="default" onClick={onAgain}>
          Save now
        </Button>
      </span>
    );
  }
  const words = {
    clean: '',
    typing: 'saving ...',
    saved: saving.state === 'saved' ? `saved ${dayjs(saving.at).format('HH:mm')}` : '',
  };
  return (
    <span className={classes.quiet} style={{ alignSelf: 'center' }} role="status">
      {words[saving.state]}
    </span>
  );
}
