import { useQuery } from '@tanstack/react-query';
import type { DoneItem } from '../../../shared/contract/undo.ts';
import { orpc } from '../../api/client.ts';

import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { useUndo } from '../../parts/undo/use-undo.ts';
import { BenchCommandError } from './bench-command-error.tsx';
import { BigButton } from './big-button.tsx';
import classes from './panels.module.css';
import { ReadBack } from './read-back.tsx';
import { useBenchKeys } from './use-bench-keys.ts';
import type { Watch } from './weigh-here.tsx';

interface UndoPanelProps {
  orderId: string;
  onClose: () => void;
  watch: Watch;
  /** The way that is left where a record cannot be undone any more. */
  onStrikeOut: (() => void) | null;
}

/** Takes back the last thing done on this order, after it was read back. */
export function UndoPanel({ orderId, watch, onClose, onStrikeOut }: UndoPanelProps) {
  const recent = useQuery(orpc.undo.recent.queryOptions({ input: { orderId } }));
  const last = recent.data?.find(({ undoneAt }) => undoneAt === null);
  if (recent.error !== null) {
    return <ErrorNote error={recent.error} onAgain={() => void recent.refetch()} />;
  }
  if (recent.data === undefined) return <BusyNote />;
  if (last?.canUndo === true) {
    return <UndoThis key={last.commandId} item={last} watch={watch} onClose={onClose} />;
  }
  return <NoUndo item={last ?? null} onClose={onClose} onStrikeOut={onStrikeOut} />;
}

interface UndoThisProps {
  item: DoneItem;
  watch: Watch;
  onClose: () => void;
}

function UndoThis({ item, watch, onClose }: UndoThisProps) {
  const { undo, command } = useUndo(item.commandId, onClose);
  const yes = () => {
    if (command.busy) return;
    watch.expect();
    undo();
  };
  useBenchKeys({ onConfirm: yes, onBack: onClose });
  return (
    <>
      <ReadBack
        said={/[.!?]$/.test(item.what) ? item.what : `${item.what}.`}
        question="Undo this?"
        more={item.effect}
        yes="Yes, undo"
        busy={command.busy}
        onYes={yes}
        onNo={onClose}
      />
      <BenchCommandError command={command} />
    </>
  );
}

function NoUndo(props: Omit<UndoPanelProps, 'orderId' | 'watch'> & { item: DoneItem | null }) {
  const { item, onClose, onStrikeOut } = props;
  useBenchKeys({ onConfirm: onClose, onBack: onClose });
  return (
    <section className={classes.panel} aria-label="Undo">
      <h2 className={classes.title}>
        {item === null ? 'Nothing was done on this order yet.' : 'The last thing cannot be undone.'}
      </h2>
      {item === null ? null : (
        <>
          <p className={classes.words}>{item.what}</p>
          <p className={classes.words}>{item.why}</p>
        </>
      )}
      <div className={classes.row}>
        <BigButton kind="main" keyHint="Enter" onClick={onClose}>
          Back
        </BigButton>
        {onStrikeOut === null ? null : (
          <BigButton onClick={onStrikeOut}>Strike a record out</BigButton>
        )}
      </div>
    </section>
  );
}
