import { Button } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Draft } from '../../../shared/contract/intake.ts';
import { api, orpc } from '../../api/client.ts';
import { sentenceOf } from '../../api/errors.ts';
import { momentText } from '../../parts/days.ts';
import { ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import classes from './intake.module.css';

interface DraftListProps {
  currentId: string;
  onResume: (draft: Draft) => void;
}

/** Requests this person began and did not finish. */
export function DraftList({ currentId, onResume }: DraftListProps) {
  const query = useQuery(orpc.intake.drafts.queryOptions());
  if (query.isError) {
    return <ErrorNote error={query.error} onAgain={() => void query.refetch()} />;
  }
  const others = (query.data ?? []).filter((draft) => draft.id !== currentId);
  if (others.length === 0) return null;
  return (
    <Panel title="Begun and not finished">
      <ul className={classes.drafts}>
        {others.map((draft) => (
          <DraftLine
            key={draft.id}
            draft={draft}
            onResume={onResume}
            onDiscarded={() => void query.refetch()}
          />
        ))}
      </ul>
    </Panel>
  );
}

interface DraftLineProps {
  draft: Draft;
  onResume: (draft: Draft) => void;
  onDiscarded: () => void;
}

function DraftLine({ draft, onResume, onDiscarded }: DraftLineProps) {
  const [isSure, setSure] = useState(false);
  const [error, setError] = useState('');
  const discard = async () => {
    try {
      await api.intake.discardDraft({ id: draft.id });
      onDiscarded();
    } catch (cause) {
      setError(sentenceOf(cause));
    }
  };
  return (
    <li className={classes.draft}>
      <span>
        {draft.title} <span className={classes.quiet}>saved {momentText(draft.savedAt)}</span>
      </span>
      <span className={classes.buttons}>
        <Button
          variant="default"
          aria-label={`Go on with ${draft.title}`}
          onClick={() => onResume(draft)}
        >
          Go on
        </Button>
        <Button
          variant="subtle"
          aria-label={isSure ? undefined : `Discard ${draft.title}`}
          onClick={() => (isSure ? void discard() : setSure(true))}
        >
          {isSure ? 'Discard for good?' : 'Discard'}
        </Button>
      </span>
      {error === '' ? null : <ErrorNote error={error} />}
    </li>
  );
}
