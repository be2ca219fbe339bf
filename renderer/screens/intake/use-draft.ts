import { useCallback, useEffect, useRef, useState } from 'react';
import type { Draft } from '../../../shared/contract/intake.ts';
import { api, newCommandId, orpc } from '../../api/client.ts';
import { sentenceOf } from '../../api/errors.ts';
import { queryClient } from '../../api/queries.ts';
import { useSession } from '../../api/session.ts';
import { fromDraftBody, toDraftBody } from './draft-body.ts';
import { emptyIntake, type IntakeForm } from './intake-form.ts';
import { forgetDraft, keepDraft, keptDraft } from './kept-draft.ts';

const saveAfterMs = 600;

export type Saving =
  | { state: 'clean' }
  | { state: 'typing' }
  | { state: 'saved'; at: string }
  | { state: 'failed'; sentence: string };

interface Working {
  id: string;
  form: IntakeForm;
}

function start(personId: string | null): Working {
  const kept = keptDraft(personId);
  if (kept === null) return { id: newCommandId(), form: emptyIntake };
  return { id: kept.id, form: fromDraftBody(kept.body) };
}

function readDraftsAgain(): void {
  void queryClient.invalidateQueries({ queryKey: orpc.intake.drafts.key() });
}

/** The request being typed and its draft, saved a moment after the last key and on leaving. */
export function useDraft() {
  const { personId } = useSession();
  const [working, setWorking] = useState(() => start(personId));
  const [saving, setSaving] = useState<Saving>({ state: 'clean' });
  const unsaved = useRef<Working | null>(null);

  const save = useCallback(async () => {
    const pending = unsaved.current;
    if (pending === null) return;
    unsaved.current = null;
    try {
      const body = toDraftBody(pending.form);
      const { savedAt } = await api.intake.saveDraft({ id: pending.id, body });
      setSaving({ state: 'saved', at: savedAt });
      readDraftsAgain();
    } catch (error) {
      unsaved.current ??= pending;
      setSaving({ state: 'failed', sentence: sentenceOf(error) });
    }
  }, []);

  // biome-ignore lint/correctness/useExhaustiveDependencies: every change starts the wait anew.
  useEffect(() => {
    const timer = setTimeout(() => void save(), saveAfterMs);
    return () => clearTimeout(timer);
  }, [working, save]);
  useEffect(() => () => void save(), [save]);

  const set = useCallback(
    (part: Partial<IntakeForm>) =>
      setWorking((now) => {
        const next = { id: now.id, form: { ...now.form, ...part } };
        unsaved.current = next;
        keepDraft(personId, next.id, toDraftBody(next.form));
        return next;
      }),
    [personId],
  );
  const edit = (part: Partial<IntakeForm>) => {
    setSaving({ state: 'typing' });
    set(part);
  };

  /** Starts with an empty page. The draft typed so far stays in the list. */
  const startNew = () => {
    void save();
    forgetDraft(personId);
    setWorking({ id: newCommandId(), form: emptyIntake });
    setSaving({ state: 'clean' });
  };
  const resume = (draft: Draft) => {
    void save();
    keepDraft(personId, draft.id, draft.body);
    setWorking({ id: draft.id, form: fromDraftBody(draft.body) });
    setSaving({ state: 'saved', at: draft.savedAt });
  };
  /** The request has become an order: its draft is gone. */
  const finish = () => {
    unsaved.current = null;
    forgetDraft(personId);
    readDraftsAgain();
  };
  return { id: working.id, form: working.form, edit, saving, save, startNew, resume, finish };
}

export type DraftWork = ReturnType<typeof useDraft>;
