import { Anchor } from '@mantine/core';
import type { MissingItem, Section } from '../../../../shared/gates.ts';
import { Mark } from '../../../parts/mark.tsx';
import { placeOf } from '../open-forms.ts';
import { useOrder } from '../order-screen.tsx';
import { gateText } from '../words.ts';
import classes from './next-step.module.css';

const linkWords: Record<Section, string> = {
  bow: 'Identify the bow',
  'bench-log': 'Record it',
  findings: 'Look at the findings',
  weighings: 'Weigh',
  consents: 'Ask, or record the answer',
  inscription: 'Write the lines',
  address: 'Give the address',
};

interface MissingListProps {
  missing: readonly MissingItem[];
  /** Says of each what it is missing for, where a way leads through several gates. */
  nameGates?: boolean;
  /** Marks what nobody may let pass. */
  showBarred?: boolean;
}

/** What a gate still needs, each with the way to put it right. */
export function MissingList({ missing, nameGates = false, showBarred = false }: MissingListProps) {
  const { order, open } = useOrder();
  return (
    <ul className={classes.missing}>
      {missing.map((item) => {
        const place = placeOf(item.section, order.bow !== null || item.item === 'target');
        return (
          <li key={`${item.gate} ${item.item}`} className={classes.row}>
            <span className={classes.sentence}>
              <Mark kind={item.item === 'no-stop-finding' ? 'stop' : 'attention'}>
                {item.sentence}
              </Mark>
              {nameGates ? (
                <span className={classes.quiet}> Before {gateText(item.gate)}.</span>
              ) : null}
              {showBarred && item.override === 'never' ? (
                <span className={classes.quiet}> Nobody may let this pass.</span>
              ) : null}
            </span>
            <Anchor
              component="button"
              type="button"
              className={classes.link}
              onClick={() => open(place, item.opens)}
            >
              {item.item === 'target' ? 'Set the target' : linkWords[item.section]}
            </Anchor>
          </li>
        );
      })}
    </ul>
  );
}
