import { Button, Radio } from '@mantine/core';
import {
  type BenchPolicy,
  trackRuleLabels,
  trackRules,
  usualBenchPolicy,
} from '../../../shared/bench-policy.ts';
import { contract } from '../../../shared/contract/index.ts';
import { api } from '../../api/client.ts';
import { useCommand } from '../../api/command.ts';
import { FieldGrid } from '../../parts/fields.tsx';
import { Fold } from '../../parts/fold.tsx';
import { inputErrors } from '../../parts/input-schema.ts';
import { NumberField } from '../../parts/number-field.tsx';
import { RecordForm } from '../../parts/record-form.tsx';
import {
  draftOf,
  type PolicyDraft,
  policyGroups,
  policyOf,
  usualText,
} from './bench-policy-fields.ts';

interface PartProps {
  value: PolicyDraft;
  onChange: (value: PolicyDraft) => void;
  errors: Record<string, string>;
}

/** The schema names fields from the input, the core from the policy. */
const errorAt = (errors: Record<string, string>, path: string) =>
  errors[`policy.${path}`] ?? errors[path];

function Figures({ value, onChange, errors }: PartProps) {
  return policyGroups.map(({ title, fields }, index) => (
    <Fold
      key={title}
      title={title}
      startsOpen={index === 0}
      isWrong={fields.some(({ path }) => errorAt(errors, path) !== undefined)}
    >
      <FieldGrid>
        {fields.map((one) => (
          <NumberField
            key={one.path}
            label={one.label}
            unit={one.unit}
            description={usualText(one)}
            value={value.figures[one.path] ?? null}
            error={errorAt(errors, one.path)}
            onChange={(figure) =>
              onChange({ ...value, figures: { ...value.figures, [one.path]: figure } })
            }
          />
        ))}
      </FieldGrid>
    </Fold>
  ));
}

function Habits({ value, onChange }: PartProps) {
  return (
    <Fold title="Habits of the bench" startsOpen>
      <Radio.Group
        label="Face that is narrowed when a limb is trapped"
        description="Common practice: the back"
        value={value.trapFace}
        onChange={(face) => onChange({ ...value, trapFace: face === 'belly' ? 'belly' : 'back' })}
      >
        <Radio value="back" label="the back" />
        <Radio value="belly" label="the belly" />
      </Radio.Group>
      <Radio.Group
        mt="md"
        label="Where the string runs to one side of a tip"
        description={`Common practice: ${trackRuleLabels['same-side']}`}
        value={value.trackRule}
        onChange={(rule) =>
          onChange({ ...value, trackRule: trackRules.find((one) => one === rule) ?? 'off' })
        }
      >
        {trackRules.map((rule) => (
          <Radio key={rule} value={rule} label={trackRuleLabels[rule]} />
        ))}
      </Radio.Group>
    </Fold>
  );
}

interface BenchPolicyFormProps {
  policy: BenchPolicy;
  rowVersion: number;
  onSaved: () => void;
}

/** Every rule of the weight bench, with what is usual under each. */
export function BenchPolicyForm({ policy, rowVersion, onSaved }: BenchPolicyFormProps) {
  const edit = useCommand(api.benchPolicy.edit, { onDone: onSaved });
  return (
    <RecordForm<PolicyDraft>
      initial={draftOf(policy)}
      check={(draft) =>
        inputErrors(contract.benchPolicy.edit, { rowVersion, policy: policyOf(draft) })
      }
      command={edit}
      action="Save the bench rules"
      onSave={(draft) => void edit.run({ rowVersion, policy: policyOf(draft) })}
    >
      {(value, onChange, errors) => (
        <>
          <Figures value={value} onChange={onChange} errors={errors} />
          <Habits value={value} onChange={onChange} errors={errors} />
          <Button variant="default" my="md" onClick={() => onChange(draftOf(usualBenchPolicy))}>
            Put common practice into every field
          </Button>
        </>
      )}
    </RecordForm>
  );
}
