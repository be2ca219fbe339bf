import { Button } from '@mantine/core';
import type { ConsumableDetail } from '../../../shared/contract/stores.ts';
import { gritWithSize } from '../../../shared/grit.ts';
import { hazardLabels } from '../../../shared/hazards.ts';
import { categoryLabels, unitLabels } from '../../../shared/stores.ts';
import { Facts } from '../../parts/facts.tsx';
import { Panel } from '../../parts/panel.tsx';
import { Cautions } from '../finish-room/cautions.tsx';

interface FactsPanelProps {
  detail: ConsumableDetail;
  onEdit: () => void;
  onLabel: () => void;
}

/** What it is and where it stands, with its cautions. */
export function FactsPanel({ detail, onEdit, onLabel }: FactsPanelProps) {
  const { grit, openedDays } = detail;
  return (
    <Panel
      title="About it"
      actions={
        <Button variant="default" onClick={onEdit}>
          Change
        </Button>
      }
    >
      <Facts
        facts={[
          ['Category', categoryLabels[detail.category]],
          ['Grit', grit === null ? '' : gritWithSize(grit)],
          ['Size from', grit === null ? '' : grit.source],
          ['Shelf', detail.shelf],
          ['Barcode', detail.barcode],
          ['Counted in', unitLabels[detail.unit]],
          ['Once opened', openedDays === null ? '' : `keeps ${openedDays} days`],
          ['Hazards', detail.hazards.map((each) => hazardLabels[each]).join(', ')],
          ['Note', detail.note],
        ]}
      />
      <div style={{ marginTop: 12 }}>
        <Cautions cautions={detail.cautions} />
      </div>
      <Button variant="default" mt="md" onClick={onLabel}>
        Shelf label
      </Button>
    </Panel>
  );
}
