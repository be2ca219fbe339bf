import { Button, Select } from '@mantine/core';
import { useState } from 'react';
import type { GeometryVersion } from '../../../../shared/contract/geometry.ts';
import type { LimbSet } from '../../../../shared/contract/limb-sets.ts';
import { Panel } from '../../../parts/panel.tsx';
import { GeometryVersions } from './geometry-versions.tsx';
import { StationsForm } from './stations-form.tsx';

interface GeometryPanelProps {
  bowId: string;
  limbSets: readonly LimbSet[];
  versions: readonly GeometryVersion[];
}

const ownLimbs = 'own';

/** The last version of these limbs that stands. */
export function lastOf(
  versions: readonly GeometryVersion[],
  limbSetId: string | null,
): GeometryVersion | null {
  return versions.find((one) => one.struckReason === null && one.limbSetId === limbSetId) ?? null;
}

/** What the limbs measured, version by version, on the bow's own page. */
export function GeometryPanel({ bowId, limbSets, versions }: GeometryPanelProps) {
  const [isOpen, setOpen] = useState(false);
  const [limbSetId, setLimbSetId] = useState<string | null>(null);
  return (
    <Panel
      title="Limbs measured"
      actions={
        isOpen ? null : (
          <Button variant="default" onClick={() => setOpen(true)}>
            Measure the limbs
          </Button>
        )
      }
    >
      {isOpen && limbSets.length > 0 ? (
        <Select
          label="Which limbs"
          mb="sm"
          data={[
            { value: ownLimbs, label: "The bow's own" },
            ...limbSets.map((set) => ({ value: set.id, label: set.name })),
          ]}
          value={limbSetId ?? ownLimbs}
          onChange={(value) => setLimbSetId(value === ownLimbs ? null : value)}
        />
      ) : null}
      {isOpen ? (
        <StationsForm
          key={limbSetId ?? ownLimbs}
          of={{ bowId, limbSetId, orderId: null }}
          last={lastOf(versions, limbSetId)}
          onClose={() => setOpen(false)}
        />
      ) : null}
      <GeometryVersions versions={versions} />
    </Panel>
  );
}
