import { Textarea } from '@mantine/core';
import { notifications } from '@mantine/notifications';
import { useQuery } from '@tanstack/react-query';
import type { CarePolicy } from '../../../shared/contract/care.ts';
import { contract } from '../../../shared/contract/index.ts';
import { api, orpc } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { Facts } from '../../parts/facts.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { NumberField } from '../../parts/number-field.tsx';
import { Panel } from '../../parts/panel.tsx';
import { RecordForm } from '../../parts/record-form.tsx';

interface Fields {
  arrowGrainsPerLb: number | null;
  careTerms: string;
}

/** An empty number is refused by the range the contract states. */
const given = ({ arrowGrainsPerLb, careTerms }: Fields) => ({
  arrowGrainsPerLb: arrowGrainsPerLb ?? 0,
  careTerms,
});

/** What the shop says on its care cards beside what was measured. */
export function CareCard({ isOwner }: { isOwner: boolean }) {
  const policy = useQuery(orpc.care.policy.queryOptions());
  if (policy.error !== null) {
    return <ErrorNote error={policy.error} onAgain={() => void policy.refetch()} />;
  }
  if (policy.data === undefined) return <BusyNote />;
  const { arrowGrainsPerLb, careTerms, rowVersion } = policy.data;
  return (
    <Panel title="Care card">
      {isOwner ? (
        <CareForm key={rowVersion} policy={policy.data} />
      ) : (
        <Facts
          facts={[
            ['Least arrow weight', `${arrowGrainsPerLb} grains a pound`],
            ['Our terms', careTerms || 'none'],
          ]}
        />
      )}
    </Panel>
  );
}

function CareForm({ policy }: { policy: CarePolicy }) {
  const edit = useCommand(api.care.editPolicy, {
    onDone: () => notifications.show({ message: 'The care card was saved.' }),
  });
  const { rowVersion } = policy;
  return (
    <RecordForm<Fields>
      initial={{ arrowGrainsPerLb: policy.arrowGrainsPerLb, careTerms: policy.careTerms }}
      check={(fields) => inputErrors(contract.care.editPolicy, { rowVersion, ...given(fields) })}
      command={edit}
      action="Save the care card"
      onSave={(fields) => void edit.run({ rowVersion, ...given(fields) })}
    >
      {(value, onChange, errors) => (
        <>
          <div style={{ maxWidth: 480 }}>
            <NumberField
              label="Least weight of an arrow, grains for each pound of draw weight"
              description="The shop's own rule. Where the maker of a bow asks for more, the card says that this counts."
              unit="gr"
              required
              value={value.arrowGrainsPerLb}
              error={errors.arrowGrainsPerLb}
              onChange={(arrowGrainsPerLb) => onChange({ ...value, arrowGrainsPerLb })}
            />
          </div>
          <Textarea
            mt="md"
            label="Our terms"
            description="Printed on the card as they stand; nothing else on it is a promise. Have them looked over where the law of your place matters."
            autosize
            minRows={3}
            maxLength={2000}
            value={value.careTerms}
            error={errors.careTerms}
            onChange={(event) => onChange({ ...value, careTerms: event.currentTarget.value })}
          />
        </>
      )}
    </RecordForm>
  );
}
