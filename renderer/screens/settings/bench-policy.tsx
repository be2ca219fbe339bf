import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { type BenchPolicy as Policy, trackRuleLabels } from '../../../shared/bench-policy.ts';
import { orpc } from '../../api/client.ts';
import { Facts } from '../../parts/facts.tsx';
import { BusyNote, ErrorNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { draftOf, policyFields } from './bench-policy-fields.ts';
import { BenchPolicyForm } from './bench-policy-form.tsx';

function PolicyFacts({ policy }: { policy: Policy }) {
  const { figures } = draftOf(policy);
  const facts = policyFields.map(({ path, label, unit }): [string, string] => [
    label,
    `${figures[path] ?? ''} ${unit}`.trim(),
  ]);
  return (
    <Facts
      facts={[
        ...facts,
        ['Face that is narrowed when a limb is trapped', `the ${policy.trapFace}`],
        ['Where the string runs to one side', trackRuleLabels[policy.trackRule]],
      ]}
    />
  );
}

/** Limits, allowances and habits of the weight bench. The owner sets them, everybody reads them. */
export function BenchPolicy({ isOwner }: { isOwner: boolean }) {
  const stored = useQuery(orpc.benchPolicy.get.queryOptions());
  const [isSaved, setSaved] = useState(false);
  if (stored.error !== null) {
    return <ErrorNote error={stored.error} onAgain={() => void stored.refetch()} />;
  }
  if (stored.data === undefined) return <BusyNote />;
  const { policy, rowVersion } = stored.data;
  return (
    <Panel title="Rules of the weight bench">
      <p style={{ marginTop: 0 }}>
        A way that breaks one of these is shown as refused, with the rule named. The usual figures
        are common practice, none is from a standard. Plans that were accepted keep the figures they
        were made with.
      </p>
      {isOwner ? (
        <BenchPolicyForm
          key={rowVersion}
          policy={policy}
          rowVersion={rowVersion}
          onSaved={() => setSaved(true)}
        />
      ) : (
        <PolicyFacts policy={policy} />
      )}
      <p role="status">{isSaved ? 'Saved.' : null}</p>
    </Panel>
  );
}
