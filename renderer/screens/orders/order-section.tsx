import type { ReactNode } from 'react';
import { FoldingPanel } from '../../parts/folding-panel.tsx';
import { Panel } from '../../parts/panel.tsx';
import { mattersNow } from './matters-now.ts';
import { anchorOf, type FormPlace } from './open-forms.ts';
import classes from './order-page.module.css';
import { useOrder } from './order-screen.tsx';
import { useFold } from './use-fold.ts';

interface OrderSectionProps {
  place: FormPlace;
  title: string;
  /** How it stands, in a few words. A section that has them folds where it does not matter now. */
  state?: string;
  /** What is inside says it better while the section is open. */
  saysItself?: boolean;
  /** A form of its own stands open in it. */
  isBusy?: boolean;
  actions?: ReactNode;
  children?: ReactNode;
}

/** A panel that links from the list of what is missing can jump to. */
export function OrderSection({ place, state, isBusy = false, ...panel }: OrderSectionProps) {
  return (
    <div id={anchorOf(place)} tabIndex={-1} className={classes.anchor}>
      {state === undefined ? (
        <Panel {...panel}>{panel.children}</Panel>
      ) : (
        <Foldable place={place} state={state} isBusy={isBusy} {...panel} />
      )}
    </div>
  );
}

type FoldableProps = OrderSectionProps & { state: string; isBusy: boolean };

function Foldable({ place, isBusy, children = null, ...panel }: FoldableProps) {
  const { order, opened } = useOrder();
  const { isOpen, toggle } = useFold({
    stage: order.card.stage,
    matters: mattersNow(place, order),
    isBusy: isBusy || opened[place] !== undefined,
  });
  return (
    <FoldingPanel {...panel} isOpen={isOpen} onToggle={toggle}>
      {children}
    </FoldingPanel>
  );
}
