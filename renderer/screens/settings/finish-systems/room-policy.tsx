import { useQuery } from '@tanstack/react-query';
import { contract } from '../../../../shared/contract/index.ts';
import { api, orpc } from '../../../api/client.ts';
import { useCommand } from '../../../api/command.ts';
import { Facts } from '../../../parts/facts.tsx';
import { FieldGrid } from '../../../parts/fields.tsx';
import { inputErrors } from '../../../parts/input-schema.ts';
import { BusyNote, ErrorNote } from '../../../parts/notes.tsx';
import { NumberField } from '../../../parts/number-field.tsx';
import { Panel } from '../../../parts/panel.tsx';
import { RecordForm } from '../../../parts/record-form.tsx';

interface PolicyFields {
  rackSlots: number | null;
  transferPercent: number | null;
}

const inputOf = ({ rackSlots, transferPercent }: PolicyFields) => ({
  rackSlots: rackSlots ?? Number.NaN,
  transferPercent: transferPercent ?? Number.NaN,
});

const aboutTransfer =
  'Part of a sprayed finish that reaches the work. On slender work such as limbs 20 to 50; the 65 that rules on spray guns ask for is measured on panels.';

/** Places on the drying rack, and how much of what is sprayed reaches a bow. */
export function RoomPolicy({ isOwner }: { isOwner: boolean }) {
  const policy = useQuery(orpc.finish.policy.queryOptions());
  const edit = useCommand(api.finish.editPolicy);
  if (policy.error !== null) {
    return <ErrorNote error={policy.error} onAgain={() => void policy.refetch()} />;
  }
  if (policy.data === undefined) return <BusyNote />;
  const { rowVersion, rackSlots, transferPercent } = policy.data;
  return (
    <Panel title="Rack and gun">
      {isOwner ? (
        <RecordForm<PolicyFields>
          key={rowVersion}
          initial={{ rackSlots, transferPercent }}
          check={(fields) =>
            inputErrors(contract.finish.editPolicy, { rowVersion, ...inputOf(fields) })
          }
          command={edit}
          action="Save"
          onSave={(fields) => void edit.run({ rowVersion, ...inputOf(fields) })}
        >
          {(value, onChange, errors) => (
            <FieldGrid>
              <NumberField
                label="Places on the drying rack"
                description="As many bows as a day's spraying can hang."
                required
                value={value.rackSlots}
                error={errors.rackSlots}
                onChange={(slots) => onChange({ ...value, rackSlots: slots })}
              />
              <NumberField
                label="Reaches the work, percent"
                description={aboutTransfer}
                required
                unit="%"
                value={value.transferPercent}
                error={errors.transferPercent}
                onChange={(percent) => onChange({ ...value, transferPercent: percent })}
              />
            </FieldGrid>
          )}
        </RecordForm>
      ) : (
        <Facts
          facts={[
            ['Places on the drying rack', String(rackSlots)],
            ['Reaches the work', `${transferPercent} %`],
          ]}
        />
      )}
    </Panel>
  );
}
