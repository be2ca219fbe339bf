import type { StoresCaution } from '../../../shared/contract/stores.ts';
import { hazardLabels } from '../../../shared/hazards.ts';
import { Fold } from '../../parts/fold.tsx';
import { Mark } from '../../parts/mark.tsx';
import { Panel } from '../../parts/panel.tsx';
import classes from './stores.module.css';

function Caution({ caution }: { caution: StoresCaution }) {
  const [first, ...rest] = caution.sentences;
  return (
    <li style={{ paddingBlock: 8 }}>
      <Mark kind="attention">{first}</Mark>
      <p className={classes.quiet} style={{ margin: '4px 0 0', overflowWrap: 'anywhere' }}>
        {caution.about.join(', ')}
      </p>
      <Fold title={`What the rules say: ${hazardLabels[caution.hazard]}`} hasRule={false}>
        {rest.map((sentence) => (
          <p key={sentence} className={classes.lead} style={{ margin: '0 0 8px' }}>
            {sentence}
          </p>
        ))}
      </Fold>
    </li>
  );
}

interface CautionsPanelProps {
  cautions: readonly StoresCaution[];
  whoDecides: string;
}

/** Hazards of what stands on the shelves. */
export function CautionsPanel({ cautions, whoDecides }: CautionsPanelProps) {
  if (cautions.length === 0) return null;
  return (
    <Panel title="Cautions">
      <ul className={classes.rows}>
        {cautions.map((caution) => (
          <Caution key={caution.hazard} caution={caution} />
        ))}
      </ul>
      <p style={{ margin: '8px 0 0' }}>{whoDecides}</p>
    </Panel>
  );
}
