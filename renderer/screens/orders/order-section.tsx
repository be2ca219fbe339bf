import type { ReactNode } from 'react';
import { Panel } from '../../parts/panel.tsx';
import { anchorOf, type FormPlace } from './open-forms.ts';
import classes from './order-page.module.css';

interface OrderSectionProps {
  place: FormPlace;
  title: string;
  actions?: ReactNode;
  children: ReactNode;
}

/** A panel that links from the list of what is missing can jump to. */
export function OrderSection({ place, ...panel }: OrderSectionProps) {
  return (
    <div id={anchorOf(place)} tabIndex={-1} className={classes.anchor}>
      <Panel {...panel} />
    </div>
  );
}
