import { Kbd, Modal, Switch, Table } from '@mantine/core';
import { useState } from 'react';
import type { Role } from '../../shared/people.ts';
import { useWho } from '../api/who.ts';
import { screensFor } from './screens.ts';
import { setSingleKeys, singleKeysOn } from './single-keys.ts';

interface ShortcutListProps {
  opened: boolean;
  onClose: () => void;
}

const singleFor = (role: Role | null): [string[], string][] => [
  [['?'], 'This list'],
  [['n'], 'On Today: add a task'],
  ...screensFor(role).map(({ key, label }): [string[], string] => [['g', key], label]),
];
const always: [string[], string][] = [
  [['Ctrl', 'K'], 'Command box: find an order, a customer, a bow or a screen'],
  [['Ctrl', 'Z'], 'Undo what was just done, while its note shows'],
  [['Tab'], 'On the board: from card to card; "Move to..." moves one'],
  [['Esc'], 'Close what is open'],
];

function Rows({ rows }: { rows: readonly [string[], string][] }) {
  return rows.map(([keys, what]) => (
    <Table.Tr key={what}>
      <Table.Td style={{ whiteSpace: 'nowrap' }}>
        {keys.map((key, i) => (
          <span key={key}>
            {i > 0 ? ' ' : ''}
            <Kbd>{key}</Kbd>
          </span>
        ))}
      </Table.Td>
      <Table.Td>{what}</Table.Td>
    </Table.Tr>
  ));
}

export function ShortcutList({ opened, onClose }: ShortcutListProps) {
  const [on, setOn] = useState(singleKeysOn);
  const role = useWho()?.role ?? null;
  return (
    <Modal opened={opened} onClose={onClose} title="Keyboard shortcuts">
      <Table>
        <Table.Tbody>
          <Rows rows={always} />
          {on ? <Rows rows={singleFor(role)} /> : null}
        </Table.Tbody>
      </Table>
      <p>A scanned order number opens its order from any screen, as long as no field is active.</p>
      <Switch
        label="Shortcuts of single keys"
        checked={on}
        onChange={(event) => {
          setSingleKeys(event.currentTarget.checked);
          setOn(event.currentTarget.checked);
        }}
      />
    </Modal>
  );
}
