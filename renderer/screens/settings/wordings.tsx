import { Button, Stack } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Wording } from '../../../shared/contract/wordings.ts';
import { isConsentUse, wordingLabels } from '../../../shared/wordings.ts';
import { orpc } from '../../api/client.ts';
import { momentText } from '../../parts/days.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import classes from './scale-item.module.css';
import { WordingDialog } from './wording-dialog.tsx';

function versionWords({ version, writtenAt, writtenBy }: Wording): string {
  if (writtenAt === null) return 'The built-in text.';
  return `Version ${version}, ${momentText(writtenAt)} by ${writtenBy}.`;
}

interface ListProps {
  title: string;
  wordings: readonly Wording[];
  isOwner: boolean;
  onOpen: (wording: Wording) => void;
}

function WordingList({ title, wordings, isOwner, onOpen }: ListProps) {
  return (
    <Panel title={title}>
      <Stack gap="xs">
        {wordings.map((wording) => (
          <article
            key={wording.use}
            className={classes.scale}
            aria-label={wordingLabels[wording.use]}
          >
            <div className={classes.words}>
              <span className={classes.name}>{wordingLabels[wording.use]}</span>
              <span className={classes.quiet}>{versionWords(wording)}</span>
            </div>
            <Button
              variant="default"
              aria-label={`${isOwner ? 'Change' : 'Read'} ${wordingLabels[wording.use]}`}
              onClick={() => onOpen(wording)}
            >
              {isOwner ? 'Change' : 'Read'}
            </Button>
          </article>
        ))}
      </Stack>
    </Panel>
  );
}

/** The shop's own words: what customers are asked and written. */
export function Wordings({ isOwner }: { isOwner: boolean }) {
  const wordings = useQuery(orpc.wordings.list.queryOptions());
  const [open, setOpen] = useState<Wording | null>(null);
  if (wordings.error !== null) {
    return <ErrorNote error={wordings.error} onAgain={() => void wordings.refetch()} />;
  }
  if (wordings.data === undefined) return <BusyNote />;
  const part = (consents: boolean) =>
    wordings.data.filter(({ use }) => isConsentUse(use) === consents);
  return (
    <Stack>
      <p style={{ margin: 0 }}>
        These are starting points, not legal advice: have what your customers agree to read by
        somebody licensed to advise where you are.
      </p>
      <WordingList title="Consents" wordings={part(true)} isOwner={isOwner} onOpen={setOpen} />
      <WordingList title="Messages" wordings={part(false)} isOwner={isOwner} onOpen={setOpen} />
      {open === null ? null : (
        <WordingDialog
          key={`${open.use} ${open.version}`}
          wording={open}
          isOwner={isOwner}
          onClose={() => setOpen(null)}
        />
      )}
    </Stack>
  );
}
