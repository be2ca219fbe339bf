import { Radio, Textarea } from '@mantine/core';
import { useState } from 'react';
import {
  type GoingHome,
  goingHome,
  goingHomeKinds,
  goingHomeLabels,
} from '../../../../shared/stages.ts';
import { api } from '../../../api/client.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { FormBox } from '../../../parts/form-box.tsx';
import { Mark } from '../../../parts/mark.tsx';
import { useOrder } from '../order-screen.tsx';
import { useOrderCommand } from '../use-order-command.ts';
import { isUnsafe, whatSendingDoes } from './homeward.ts';
import classes from './next-step.module.css';

const meanings: Record<GoingHome, string> = {
  declined: 'Price, date or findings were told, and they do not want the work.',
  refused: 'The limb cannot give that much, or the work would not be safe.',
  withdrawn: 'The work was agreed and they take it back.',
  broken: 'It cannot be shot any more. Write down the damage as an incident too.',
};

export function SendHomeDialog({ onDone }: { onDone: () => void }) {
  return (
    <Dialog onClose={onDone} size="lg" title="Send it home">
      <SendHomeForm onDone={onDone} />
    </Dialog>
  );
}

function SendHomeForm({ onDone }: { onDone: () => void }) {
  const { card } = useOrder().order;
  const [kind, setKind] = useState<GoingHome | null>(null);
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const command = useOrderCommand(api.orders.sendHome, onDone);
  const isThin = reason.trim().length < 3;
  return (
    <FormBox
      plain
      hideTitle
      title="Send it home"
      submitLabel="Send it home"
      command={command}
      onCancel={onDone}
      onSubmit={() => {
        setTried(true);
        if (kind === null || isThin) return;
        const { id, rowVersion } = card;
        void command.run({ id, rowVersion, kind, reason: reason.trim() });
      }}
    >
      <Radio.Group
        size="md"
        label="Why it goes home with the work not done"
        required
        value={kind}
        error={isTried && kind === null ? 'Choose one.' : command.details.kind}
        onChange={(value) => setKind(goingHome.parse(value))}
      >
        {goingHomeKinds.map((value) => (
          <Radio
            key={value}
            value={value}
            label={goingHomeLabels[value]}
            description={meanings[value]}
          />
        ))}
      </Radio.Group>
      <Textarea
        label="Reason in a few words"
        description="It stays in the shop and is kept in the history of the order."
        required
        maxLength={400}
        value={reason}
        error={isTried && isThin ? 'Give the reason in a few words.' : command.details.reason}
        onChange={(event) => setReason(event.currentTarget.value.replaceAll('\n', ' '))}
      />
      <div>
        <p className={classes.text}>What happens:</p>
        <ul className={classes.happens}>
          {whatSendingDoes(card, kind).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      </div>
      {isUnsafe(card, kind) ? (
        <Mark kind="stop">Leave it unstrung. Nobody strings or draws it, here or at home.</Mark>
      ) : (
        <Mark kind="attention">
          Pack it unstrung, and not before its finish is safe to wrap. Agree with the owner what is
          owed for work done so far.
        </Mark>
      )}
    </FormBox>
  );
}
