import { Button, Menu } from '@mantine/core';
import { IconChevronDown } from '@tabler/icons-react';
import type { Lot } from '../../../shared/contract/stores.ts';
import { lotName, quantityText, type StockUnit } from '../../../shared/stores.ts';
import { dayText, fullDay } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import classes from './stores.module.css';

export type LotAction = 'issue' | 'count' | 'open' | 'discard' | 'back' | 'edit' | 'label';

function LotMark({ lot }: { lot: Lot }) {
  if (lot.onHand <= 0) return null;
  if (lot.expired) return <Mark kind="stop">Expired: not to be used</Mark>;
  if (lot.next) return <Mark kind="done">Use this first</Mark>;
  return null;
}

function daysLine(lot: Lot): string {
  const parts = [
    lot.lastDay === null ? 'no last day' : `use by ${dayText(lot.lastDay)}`,
    lot.openedOn === null ? '' : `opened ${fullDay(lot.openedOn)}`,
    lot.openedOn !== null && lot.expiresOn !== null && lot.lastDay !== lot.expiresOn
      ? `printed ${fullDay(lot.expiresOn)}`
      : '',
    `came ${fullDay(lot.receivedOn)}`,
    `label ${lot.barcode}`,
  ];
  return parts.filter((part) => part !== '').join(', ');
}

interface LotItemProps {
  lot: Lot;
  unit: StockUnit;
  onAct: (action: LotAction) => void;
}

/** One lot: how much, until when, and what can be done with it. */
export function LotItem({ lot, unit, onAct }: LotItemProps) {
  const name = lotName(lot);
  return (
    <li className={classes.lot}>
      <div>
        <span className={classes.name}>Lot {name}</span>
        <span className={classes.line}>{daysLine(lot)}</span>
        {lot.note === '' ? null : <span className={classes.line}>{lot.note}</span>}
        <LotMark lot={lot} />
      </div>
      <span className={classes.amount}>{quantityText(lot.onHand, unit)}</span>
      <div className={classes.buttons}>
        {lot.onHand > 0 && !lot.expired ? (
          <Button
            variant="default"
            onClick={() => onAct('issue')}
            aria-label={`Issue from lot ${name}`}
          >
            Issue
          </Button>
        ) : null}
        <Button variant="default" onClick={() => onAct('count')} aria-label={`Count lot ${name}`}>
          Count
        </Button>
        {lot.onHand > 0 && lot.expired ? (
          <Button
            variant="default"
            onClick={() => onAct('discard')}
            aria-label={`Discard lot ${name}`}
          >
            Discard
          </Button>
        ) : null}
        <Menu position="bottom-start">
          <Menu.Target>
            <Button
              variant="default"
              aria-label={`More for lot ${name}`}
              rightSection={<IconChevronDown size={18} aria-hidden="true" />}
            >
              More
            </Button>
          </Menu.Target>
          <Menu.Dropdown>
            {lot.openedOn === null && lot.onHand > 0 ? (
              <Menu.Item mih={44} onClick={() => onAct('open')}>
                Open it
              </Menu.Item>
            ) : null}
            <Menu.Item mih={44} onClick={() => onAct('back')}>
              Book back
            </Menu.Item>
            {lot.onHand > 0 ? (
              <Menu.Item mih={44} onClick={() => onAct('discard')}>
                Discard
              </Menu.Item>
            ) : null}
            <Menu.Item mih={44} onClick={() => onAct('label')}>
              Label
            </Menu.Item>
            <Menu.Item mih={44} onClick={() => onAct('edit')}>
              Change
            </Menu.Item>
          </Menu.Dropdown>
        </Menu>
      </div>
    </li>
  );
}
