import { Combobox, Kbd, TextInput, useCombobox } from '@mantine/core';
import { useDebouncedValue } from '@mantine/hooks';
import { IconSearch } from '@tabler/icons-react';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocation } from 'wouter';
import type { Found } from '../../shared/contract/find.ts';
import { orpc } from '../api/client.ts';
import { sentenceOf } from '../api/errors.ts';
import { useWho } from '../api/who.ts';
import classes from './command-box.module.css';
import { commandBoxId } from './focus.ts';
import { openFound, pathOf } from './open-found.ts';
import { screensFor } from './screens.ts';

const groups: { kind: Found['kind']; label: string }[] = [
  { kind: 'order', label: 'Orders' },
  { kind: 'customer', label: 'Customers' },
  { kind: 'bow', label: 'Bows' },
  { kind: 'consumable', label: 'Stores' },
  { kind: 'shelf', label: 'Issue from the shelf' },
  { kind: 'lot', label: 'Issue from the lot' },
];

function useResults(typed: string) {
  const [text] = useDebouncedValue(typed.trim(), 120);
  const found = useQuery({
    ...orpc.find.queryOptions({ input: { text } }),
    enabled: text !== '',
    placeholderData: keepPreviousData,
  });
  return { found, settled: text === typed.trim() && !found.isFetching };
}

/** Find an order, a customer, a bow or a consumable, or go to a screen. Enter takes the first that fits. */
export function CommandBox() {
  const [typed, setTyped] = useState('');
  const [, go] = useLocation();
  const { found, settled } = useResults(typed);
  const combobox = useCombobox({ onDropdownClose: () => combobox.resetSelectedOption() });
  const wanted = typed.trim().toLowerCase();
  const role = useWho()?.role ?? null;
  const places = screensFor(role).filter(({ label }) => label.toLowerCase().includes(wanted));
  const results = wanted === '' ? [] : (found.data ?? []);
  const nothing = wanted !== '' && settled && results.length === 0 && places.length === 0;

  const open = (path: string) => {
    setTyped('');
    combobox.closeDropdown();
    go(path);
  };
  // A scanner or a quick hand presses Enter before the results have come.
  const openTyped = async () => {
    if (await openFound(typed.trim())) {
      setTyped('');
      combobox.closeDropdown();
    }
  };

  return (
    <Combobox store={combobox} onOptionSubmit={open} position="bottom-start">
      <Combobox.Target>
        <TextInput
          id={commandBoxId}
          aria-label="Find an order, a customer, a bow or a screen"
          placeholder="Find or go to ..."
          leftSection={<IconSearch size={20} aria-hidden="true" />}
          rightSection={<Kbd className={classes.hint}>Ctrl K</Kbd>}
          rightSectionWidth={74}
          autoComplete="off"
          maxLength={200}
          value={typed}
          onChange={(event) => {
            setTyped(event.currentTarget.value);
            combobox.openDropdown();
            combobox.resetSelectedOption();
          }}
          onFocus={() => combobox.openDropdown()}
          onBlur={() => combobox.closeDropdown()}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || combobox.getSelectedOptionIndex() !== -1) return;
            event.preventDefault();
            if (wanted !== '') void openTyped();
          }}
        />
      </Combobox.Target>
      <Combobox.Dropdown className={classes.dropdown ?? ''}>
        <Combobox.Options aria-label="Found">
          {groups.map(({ kind, label }) => {
            const ofKind = results.filter((result) => result.kind === kind);
            return ofKind.length === 0 ? null : (
              <Combobox.Group label={label} key={kind}>
                {ofKind.map((result) => (
                  <Combobox.Option value={pathOf(result)} key={result.id} mih={44}>
                    <span className={classes.title}>{result.title}</span>{' '}
                    <span className={classes.subtitle}>{result.subtitle}</span>
                  </Combobox.Option>
                ))}
              </Combobox.Group>
            );
          })}
          {places.length === 0 ? null : (
            <Combobox.Group label="Screens">
              {places.map(({ href, label }) => (
                <Combobox.Option value={href} key={href} mih={44}>
                  {label}
                </Combobox.Option>
              ))}
            </Combobox.Group>
          )}
          {found.error === null ? null : <Combobox.Empty>{sentenceOf(found.error)}</Combobox.Empty>}
          {nothing && found.error === null ? <Combobox.Empty>Nothing fits.</Combobox.Empty> : null}
        </Combobox.Options>
      </Combobox.Dropdown>
    </Combobox>
  );
}
