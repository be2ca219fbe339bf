import { Button, Group, Modal, Stack } from '@mantine/core';
import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { stageLabels } from '../../../shared/stages.ts';
import { codeOf } from '../../api/errors.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { ErrorNote } from '../../parts/notes.tsx';
import { ReasonForm } from '../../parts/reason-form.tsx';
import { MissingBody } from './missing-body.tsx';
import type { Asking, useMoves } from './use-moves.ts';
import { whatChanged } from './what-changed.ts';

interface MoveDialogsProps {
  moves: ReturnType<typeof useMoves>;
  /** Cards as they are now, to say what changed. */
  cards: readonly OrderCard[];
  isOwner: boolean;
}

function titleOf({ what, move }: Asking): string {
  const { card, to } = move;
  if (what === 'reason') return `Move ${card.number} back to ${stageLabels[to]}`;
  if (what === 'missing') return `${card.number} cannot go to ${stageLabels[to]} yet`;
  return `${card.number} was not moved`;
}

/** What a move asks before it goes on, and why it did not. */
export function MoveDialogs({ moves, cards, isOwner }: MoveDialogsProps) {
  const { asking } = moves;
  return (
    <Modal
      opened={asking !== null}
      onClose={moves.cancel}
      title={asking === null ? '' : titleOf(asking)}
      size="lg"
    >
      {asking === null ? null : (
        <Body asking={asking} moves={moves} cards={cards} isOwner={isOwner} />
      )}
    </Modal>
  );
}

function Body({ asking, moves, cards, isOwner }: MoveDialogsProps & { asking: Asking }) {
  const { move } = asking;
  switch (asking.what) {
    case 'reason':
      return (
        <ReasonForm
          inDialog
          title={titleOf(asking)}
          label="Why does it go back?"
          submitLabel={`Move back to ${stageLabels[move.to]}`}
          command={moves.command}
          onCancel={moves.cancel}
          onSubmit={(reason) => moves.send(move, { reason })}
        />
      );
    case 'missing':
      return (
        <MissingBody
          orderId={move.card.id}
          missing={asking.missing}
          isOwner={isOwner}
          command={moves.command}
          onClose={moves.cancel}
          onOverride={(reason) => moves.send(move, { override: { reason } })}
        />
      );
    case 'failed':
      return <Failed asking={asking} moves={moves} cards={cards} />;
  }
}

function Failed({ asking, moves, cards }: Omit<MoveDialogsProps, 'isOwner'> & { asking: Asking }) {
  const { card } = asking.move;
  const { command } = moves;
  const stale = codeOf(command.cause) === 'STALE';
  const now = cards.find(({ id }) => id === card.id);
  return (
    <Stack>
      {command.unanswered ? (
        <CommandError command={{ ...command, again: async () => moves.again(asking.move) }} />
      ) : (
        <ErrorNote error={command.error ?? 'The order was not moved.'} />
      )}
      {stale ? (
        <div>
          <p style={{ margin: 0 }}>What changed since you looked:</p>
          <ul>
            {whatChanged(card, now).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <p style={{ margin: 0 }}>The board shows it as it is now.</p>
        </div>
      ) : null}
      <Group>
        <Button variant="default" onClick={moves.cancel}>
          Back to the board
        </Button>
      </Group>
    </Stack>
  );
}
