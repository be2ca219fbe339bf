import type { InscriptionLayoutRecord } from '../../../../shared/contract/inscriptions.ts';
import { letteringMannerLabels, letteringSurfaceLabels } from '../../../../shared/inscription.ts';
import { decimal } from '../../../../shared/measure.ts';
import { momentText } from '../../../parts/days.ts';
import { Facts } from '../../../parts/facts.tsx';
import classes from './inscription.module.css';

/** Where and how the lines are put on the bow. */
export function LayoutFacts({ layout }: { layout: InscriptionLayoutRecord }) {
  return (
    <div className={classes.layout}>
      <Facts
        facts={[
          ['Where', layout.position],
          ["Maker's own mark", layout.makerMark],
          ['Surface', letteringSurfaceLabels[layout.surface]],
          ['How', letteringMannerLabels[layout.manner]],
          ['Ink', layout.ink],
          ['Height of a capital', `${decimal(layout.letterHeightIn, 4)} in`],
          ['Old marking', layout.oldMarking],
          ['Note', layout.note],
          ['Said by', `${layout.personName}, ${momentText(layout.recordedAt)}`],
        ]}
      />
    </div>
  );
}
