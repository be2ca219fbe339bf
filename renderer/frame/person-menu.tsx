import { Menu } from '@mantine/core';
import { useQuery } from '@tanstack/react-query';
import { orpc } from '../api/client.ts';
import { setPerson } from '../api/session.ts';
import { useWho } from '../api/who.ts';
import classes from './frame.module.css';

/** Initials of who is working; another person takes over from here. */
export function PersonMenu({ onShortcuts }: { onShortcuts: () => void }) {
  const who = useWho();
  const people = useQuery(orpc.people.list.queryOptions());
  if (who === null) return null;
  const others = (people.data ?? []).filter((person) => person.active && person.id !== who.id);
  return (
    <Menu position="bottom-end" width={260}>
      <Menu.Target>
        <button
          type="button"
          className={classes.person}
          aria-label={`${who.initials}: ${who.name} is working. Change`}
        >
          {who.initials}
        </button>
      </Menu.Target>
      <Menu.Dropdown>
        <Menu.Label>
          {who.name}, {who.role}
        </Menu.Label>
        {others.map((person) => (
          <Menu.Item key={person.id} mih={44} onClick={() => setPerson(person.id)}>
            {person.initials} - {person.name}
          </Menu.Item>
        ))}
        <Menu.Divider />
        <Menu.Item mih={44} onClick={() => setPerson(null)}>
          Nobody: ask who is working
        </Menu.Item>
        <Menu.Item mih={44} onClick={onShortcuts}>
          Keyboard shortcuts
        </Menu.Item>
      </Menu.Dropdown>
    </Menu>
  );
}
