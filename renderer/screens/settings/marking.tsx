import { Button, Radio } from '@mantine/core';
import { notifications } from '@mantine/notifications';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import {
  type MarkingRoundLbf,
  markingRoundLabels,
  markingRoundLbf,
  markingRounds,
} from '../../../shared/inscription.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { CommandError } from '../../parts/command-error.tsx';
import { Facts } from '../../parts/facts.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';

/** How a measured weight is rounded where it is written on a bow. */
export function Marking({ isOwner }: { isOwner: boolean }) {
  const policy = useQuery(orpc.inscriptions.policy.queryOptions());
  if (policy.error !== null) {
    return <ErrorNote error={policy.error} onAgain={() => void policy.refetch()} />;
  }
  if (policy.data === undefined) return <BusyNote />;
  return (
    <Panel title="Weights written on bows">
      {isOwner ? (
        <Rounding key={policy.data.rowVersion} policy={policy.data} />
      ) : (
        <Facts facts={[['Rounded to', markingRoundLabels[policy.data.markingRoundLbf]]]} />
      )}
    </Panel>
  );
}

interface RoundingProps {
  policy: { markingRoundLbf: MarkingRoundLbf; rowVersion: number };
}

function Rounding({ policy }: RoundingProps) {
  const [round, setRound] = useState(policy.markingRoundLbf);
  const command = useCommand(api.inscriptions.setPolicy, {
    onDone: () => notifications.show({ message: 'The rounding was saved.' }),
  });
  const { rowVersion } = policy;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void command.run({ rowVersion, markingRoundLbf: round });
      }}
    >
      <Radio.Group
        label="Round a measured weight to the"
        description="The shop's own rule; no standard says it. The weight as measured stands beside it. Markings that no longer fit are refused until they are changed."
        value={String(round)}
        onChange={(value) => setRound(markingRoundLbf.parse(Number(value)))}
      >
        {markingRounds.map((each) => (
          <Radio key={each} value={String(each)} label={markingRoundLabels[each]} />
        ))}
      </Radio.Group>
      <CommandError command={command} />
      <Button type="submit" mt="md" loading={command.busy}>
        Save the rounding
      </Button>
    </form>
  );
}
